/** How pages ask to take something apart, in English, German and French. */

/** A plain request that begins so is a step, under the heading of taking apart. */
export const takesApart =
  /^[^.;:]{3,60}\s(?:is|are|must be|should be|has to be|have to be)\s(?:removed|unscrewed|detached|pulled (?:off|out)|withdrawn|loosened|disconnected|taken (?:off|out|apart)|separated)(?!\p{L})|^(?:fully\s|completely\s)?(?:disassemble|dismantle|take\s.{3,40}\sapart)(?!\p{L})|^(?:then\s|next,?\s|always\s|carefully\s)?(?:press|push|pull|remove|unscrew|detach|withdraw|take|slide|release|loosen|lift|turn|twist|rotate|unlock|disconnect|separate|unclip|disengage|open|retract|draw|dévisser|retirer|démonter|enlever|détacher|tirer|ouvrir|déclipser|séparer|appuyer|desserrer|tourner)\s(?!(?:care|note|place)(?!\p{L}))|(?:abschrauben|abziehen|herausziehen|abnehmen|lösen|öffnen|trennen|herausdrehen|aushängen|entnehmen|herausnehmen|entriegeln)\.?$/iu;

/** One thing off another, whatever the heading speaks of. */
export const partsFrom =
  /^(?:press|push|pull|unscrew|detach|withdraw|slide|lift|unclip|disengage|remove)\b.{2,80}\s(?:off|out of|from|apart|by unscrewing)(?!\p{L})|^(?:unscrew|detach|loosen|release)\s[^.;:,]{3,60}\s(?:with|using)\s(?:the|an?)\s|^(?:remove|take out|detach|unscrew|disconnect)\s(?:the\s|all\s)?[\p{L}-]+(?:\s[\p{L}-]+)?\.?$|^(?:dévisser|démonter|déclipser)\s|(?:abschrauben|abziehen|herausziehen|herausdrehen|aushängen)\.?$/iu;

/** `Open all stopcocks`; the group is what. */
export const openedFirst = /^(?:always )?open\s(?:the\s)?(\p{L}+(?:[\s-]\p{L}+){0,4}?)(?:\sbefore\scleaning)?[.!]?$/iu;

/** What is taken off before cleaning and is no part. */
export const noPart =
  /(?<!\p{L})(?:soil|blood|debris|residues?|tissue|matter|cement|contamina\p{L}*|dirt|fluids?|labels?|packag\p{L}*|wrap|gloves?|plug|schmutz|blut|rückst\p{L}*|gewebe|verschmutz\p{L}*|souillures?|sang|résidus?)(?!\p{L})/iu;

/** What stays together; the group is what. */
export const leftTogether: readonly RegExp[] = [
  /^(?:leave|keep)\s(?:the\s)?(.{3,60}?)\s(?:in (?:place|position)|assembled|fitted|attached|screwed in)\.?$/i,
  /^(?:do not|never)\s(?:dismantle|disassemble|take apart|unscrew|detach)\s(?:the\s)?(.{3,60}?)(?:\sany)?(?:\sfurther)?\.?$/i,
  /^(?:do not|never)\stake\s(?:the\s)?(.{3,60}?)\sapart\.?$/i,
  /^(?:the\s)?(?!(?:instrument|device|product|forceps|unit|item)s?\s(?:can|must|may|should|is|are))(.{3,60}?)\s(?:(?:cannot|can not|must not|may not|should not|must never)\sbe|(?:is|are)\snot\sto\sbe)\s(?:dismantled|disassembled|taken apart|removed|unscrewed)(?:\sany)?(?:\sfurther)?\.?$/i,
  /^(?:further\s)?(?:disassembly|dismantling)\sof\s(?:the\s)?(.{3,60}?)\s(?:is|are)\s(?:not (?:permitted|allowed|possible)|prohibited|forbidden)\.?$/i,
  /^(?:den\s|die\s|das\s)?(.{3,60}?)\s(?:nicht (?:zerlegen|entfernen|abnehmen|demontieren|abschrauben|lösen)|montiert lassen)\.?$/i,
  /^ne (?:pas|jamais) (?:démonter|dévisser)\s(?:le\s|la\s|les\s|l.)?(.{3,60}?)\.?$/i,
];

export const aboutApart =
  /(?:dis|un)assembl|dismantl|tak(?:e|ing)\s.{0,30}\s(?:to pieces|apart)|tak(?:e|ing) apart|zerleg|demont|démont|désassembl/;
export const aboutPreparing = /prepar|before cleaning|vorbereit|prépar/;

/** Under a heading of packing: so it is packed. */
export const putTogether =
  /^(?:re-?)?assemble\b|(?:zusammenbauen|zusammensetzen|montieren)\b|^(?:ré?)?(?:monter|assembler)\s/i;
