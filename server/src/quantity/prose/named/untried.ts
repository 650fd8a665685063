/** `not evaluated by the maker`: neither allowed nor forbidden. */
export const untried =
  /\b(?:not|never|no longer)\s(?:yet\s)?(?:been\s)?(?:tested|validated|evaluated|qualified|verified|investigated)\b|\bno\s(?:data|validation)\b|(?<!\p{L})nicht\s(?:getestet|validiert|geprüft|untersucht|bewertet)(?!\p{L})|(?<!\p{L})pas\s(?:encore\s)?(?:été\s)?(?:testée?s?|validée?s?|évaluée?s?|vérifiée?s?)(?!\p{L})/iu;
