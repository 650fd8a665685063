/** What a derived route does not say. Printed under every answer about routes. */
export const routeCautions: readonly string[] = [
  'The manufacturer’s current document is the instruction; this is an index to it. Where they differ, follow the document and report the difference.',
  '"Consistent with the encoded instruction" is the strongest statement made here: it proposes, people decide, and no load is judged.',
  'Silence in a document is shown as silence and never filled in. Figures that depend on altitude hold for this site only.',
  'Suspected prion disease, implants in an emergency, recalls: stop and call infection prevention.',
];
