/** How something cools after the cycle, in English, German and French; the group is that. */

export const coolsDown =
  /(?<!\p{L})(?:cool(?:s|ed|ing)?(?!\p{L}|,?\s(?:and\s)?(?:dry|place|water|running|clean))|(?:still|is|are|be) (?:warm|hot)|reach(?:es|ed)? (?:room|ambient) temperature|abkühl\p{L}*|abgekühlt|refroidi\p{L}*)/iu;

/** On what it stands. */
export const coolingSurfaces: readonly RegExp[] = [
  /\bcool(?:s|ed|ing)?\b(?!.{0,20}\bnot\b)[^.;,]{0,40}?\son\s((?:a|an|the|its|their)\s[\p{L}\s-]{3,40}?)(?=\s(?:before|until|for|to|and|at|after|in)\b|[.,;]|$)/iu,
  /(?<!\p{L})auf\s((?:einem|einer|dem|der)\s[\p{L}\s-]{3,40}?)\s(?:\p{L}+\s)?abkühlen/iu,
  /refroidir\s(?:[\p{L}\s]{0,20}\s)?sur\s((?:un|une|le|la)\s[\p{L}\s-]{3,40}?)(?=\s(?:avant|jusqu|pendant)|[.,;]|$)/iu,
];

/** How: in air, slowly, to room temperature. */
export const coolingMethods: readonly RegExp[] = [
  /\bcool(?:s|ed|ing)?\b(?:\sdown)?\s(?:\p{L}+\s)?((?:slowly|naturally|gradually|to (?:room|ambient) temperature|at (?:room|ambient) temperature|in (?:ambient |still |room |free )?air)(?:\s(?:in (?:ambient |still |room |free )?air|to (?:room|ambient) temperature|at (?:room|ambient) temperature))?)/iu,
  /\b(slowly|naturally|gradually)\scool\b/iu,
  /\b((?:reach|return to|come to) (?:room|ambient) temperature)/iu,
  /(?<!\p{L})((?:langsam|auf raumtemperatur|bei raumtemperatur|an der luft)(?:\s(?:auf raumtemperatur|bei raumtemperatur|an der luft))?)\s(?:\p{L}+\s)?abkühlen/iu,
  /refroidir\s((?:lentement|naturellement|à l.air(?: libre)?|à température ambiante|jusqu.à température ambiante)(?:\s(?:à température ambiante|jusqu.à température ambiante))?)/iu,
];

/** What it must cool before. */
export const cooledBefore: readonly RegExp[] = [
  /\bcool(?:s|ed|ing)?\b.{0,60}\b(?:before|prior to)\s((?:it is |they are |the pack is |being )?(?:the next |further )?(?:use|re-?use|handling|touching|connecting|connection|assembly|removal|unloading|storage|stacking|packing|moving|touched|handled|used|connected|stacked|stored|moved|removed|opened)(?:\s(?:to|the|power|of|with|in)\s[\p{L}\s]{2,30})?)/iu,
  /^(?:do not|never)\s((?:use|touch|handle|connect|stack|assemble|store|move|remove)(?:\s[\p{L}\s]{2,30})?)\suntil\b.{0,40}\bcool/iu,
  /^(?:do not|never)\s((?:use|touch|handle|connect|insert|attach|assemble|store|move|stack)\s[\p{L}\s]{2,30}?)\s(?:while|when|if|as long as)\b.{0,40}\b(?:warm|hot)\b/iu,
  /vor (?:der |dem |jeder )?((?:anwendung|gebrauch|verwendung|berühren|lagerung|anschließen|montage))\b.{0,40}abkühlen/iu,
  /refroidir\b.{0,60}\bavant (?:l.|la |le |toute )?((?:utilisation|manipulation|stockage|branchement|montage))/iu,
];
