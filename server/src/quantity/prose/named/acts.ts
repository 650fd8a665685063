import type { Named } from './named.ts';

/** What sentences ask for or say outright, in English, German and French. For text in small letters unless a pattern says otherwise. */

/** `if necessary`: what is asked for holds only then. */
export const whenNeeded =
  /(?<!\p{L})(?:(?:if|as|when|where|wherever|whenever) (?:necessary|needed|required|appropriate)|bei bedarf|(?:falls|wenn|sofern) (?:nötig|erforderlich|notwendig)|si nécessaire|au besoin|le cas échéant)(?!\p{L})/iu;

/** `Have it inspected by the maker every 100 cycles`: a service, and no end of its life. */
export const sentToService =
  /\b(?:have|send|return|hand)\b.{0,60}\b(?:inspected|serviced|checked|overhauled|service|servicing|maintenance|inspection)\b|\b(?:serviced|servicing|service|maintenance|inspection by\b.{0,30}):?\s(?:is due|interval|every|after)\b|(?:zur|für die) (?:wartung|inspektion)|wartung durch|wartungsintervall|(?:faire|à) (?:réviser|contrôler par)|révision par/iu;

/** Without tools, or nothing of the kind: the sentence asks for nothing. */
export const nothingNeeded =
  /^(?:(?:no|special)\s)?tools?\s.{0,30}\bnot\s(?:needed|required|necessary)|^no\s(?:special\s)?tools?\b|^(?:es )?(?:ist|sind) keine? werkzeuge?|^werkzeuge? .{0,20}nicht (?:nötig|erforderlich)|^aucun outil|\bno (?:lubrication|oiling|disassembly|dismantling) (?:is )?(?:needed|required|necessary)/iu;

/** `Batteries must never be immersed`: a part is meant, and not the device. */
export const ofPart =
  /^(?:(?:the|all|die|der|das|les?|la)\s)?(?:batter(?:y|ies)|cables?|cords?|seals?|caps?|chargers?|plugs?|akkus?|batterien?|kabel|dichtung(?:en)?|kappen?|batteries|câbles?|joints?|bouchons?)\s(?:must|may|should|shall|can|cannot|are|is|do|darf|dürfen|muss|müssen|ne)\b/i;

/** In which state it is delivered; the group is that state. */
export const arriving: readonly RegExp[] = [
  /\b(?:delivered|supplied|provided|shipped|sold|comes?(?:\sto\syou)?|arrives?)\b(?:\s\p{L}+){0,2}\s(non[\s-]?sterile|unsterile|sterile)\b(?!\s(?:water|gloves|drape))/iu,
  /\b(?:is|are)\s(non[\s-]?sterile|unsterile|sterile)\s(?:on|upon|at|when)\s(?:delivery|delivered|supplied|receipt)/iu,
  /(?:lieferzustand|auslieferung)\s?:\s*(unsteril|nicht steril|steril)|(?:wird|werden|ist|sind)\s(unsteril|nicht steril|steril)\s(?:aus)?geliefert|^(unsteril) geliefert/iu,
  /(?:livrée?s?|fournie?s?)(?:\sà l.état)?\s(non[\s-]stériles?|stériles?)/iu,
];

/** It is made ready before it is used for the first time. */
export const beforeFirstUse =
  /\b(?:before|prior to)\b.{0,30}\b(?:(?:first|initial)\s(?:\p{L}+\s)?(?:use|time|patient)|(?:each|every)\suse\b.{0,20}\bfirst\b)|vor (?:der|dem) ersten (?:anwendung|gebrauch|einsatz)|avant (?:la |leur |sa )?première utilisation/iu;
export const madeReady =
  /\b(?:clean|reprocess|process|sterili[sz]e|disinfect)\w*|reinig|aufbereit|sterilisier|nettoy|stérilis|retrait/iu;

/** Soil that is taken off with a cloth. */
export const wiping =
  /\b(?:remove|wipe|clean)\b.{0,50}\b(?:cloth|wipe|gauze|sponge|towel|swab)s?\b|\bwipe\b|(?:tuch|tüchern|tupfer|kompresse)\b.{0,30}(?:entfernen|abwischen|reinigen)|abwischen|(?:essuyer|enlever|éliminer|retirer)\b.{0,50}(?:compresse|chiffon|lingette|gaze)|^essuyer/iu;

export const neverQuenched =
  /(?:do not|don.t|never|not)\s[\p{L},\s]{0,25}?(?:quench|(?:cool|rinse)\b.{0,30}\b(?:with|in|under)\s(?:cold\s)?water)|nicht (?:mit|in|unter) (?:kaltem )?wasser (?:ab)?kühlen|nicht abschrecken|ne (?:pas|jamais) (?:le |la |les )?refroidir.{0,20}eau/iu;

/** Not touched while hot, and not cooled by fans. */
export const neverTouched =
  /(?:do not|never|not)\b.{0,20}\b(?:touch|handle)\b.{0,80}\b(?:cool|hot|warm)|nicht (?:berühren|anfassen).{0,60}(?:abgekühlt|heiß)|(?:abgekühlt|heiß).{0,60}nicht (?:berühren|anfassen)|ne pas (?:toucher|manipuler).{0,60}(?:refroidi|chaud)/iu;
export const noFan =
  /(?:do not|never|no|not|without)\b.{0,50}\bfans?\b|\bfans?\b.{0,40}\b(?:not|never|forbidden|prohibited)\b|kein\p{L}* (?:ventilator|gebläse)|(?:pas|sans) de ventilateur/iu;

export const excessRemoved =
  /\b(?:wipe|remove)\b.{0,20}\b(?:surplus|excess)(?:\b.{0,20}(?:oil|lubricant)|[.;,]|$)|überschüssige[sn]? (?:öl|schmier|pflege)|(?:essuyer|enlever|éliminer).{0,20}excès/iu;

export const eventRelated = /\bevent[\s-]related\b|ereignisbezogen|liée?s? (?:aux|à des) événements/iu;

/** Before the machine it is cleaned by hand, in any case. */
export const handBeforeMachine =
  /\b(?:only )?after\b.{0,40}\bmanual|\bmanual\b.{0,60}\b(?:must (?:be|have been) (?:completed|done|carried out|performed)|first\b|(?:is|are) (?:always )?(?:required|necessary|needed|mandatory) (?:before|prior))|(?:erst|nur) nach\b.{0,40}manuell|manuelle \p{L}*reinigung.{0,40}(?:voraus|zuvor|vorher)|^pre-?clean\b.{0,40}\b(?:manually|(?:according to|as (?:described|specified|stated)(?: in| under)?|following|per|by) (?:the )?(?:steps? |sections? )?\d)|\bmanuelle\p{L}* (?:\p{L}*schritte?|reinigungsschritte?)\b.{0,60}\bvor der maschinell|(?:die )?schritte? \d.{0,60}\bvor der maschinell|^(?:complete|carry out|perform|do|follow|first)\b.{0,30}\bsteps?\s\d.{0,40}\b(?:beforehand|first|before|in advance|prior|must precede)|^(?:the\s|all\s)?(?:manual\s)?steps?\s\d.{0,30}\b(?:must|are to|have to|shall)\b.{0,40}\b(?:beforehand|first|before|in advance|prior|precede)|(?:les )?étapes? (?:manuelles? )?\d?.{0,60}\bavant le (?:nettoyage|lavage) (?:automatique|automatisé|en machine|mécanique)|(?:après|à la suite de).{0,20}nettoyage manuel|nettoyage manuel.{0,40}(?:préalable|au préalable)/iu;

/** `assembled_for`: the state in which it is at a stage. */
export const assembledAt: Named = [
  [
    'packaging: true',
    /^(?:(?:re-?)?assemble|put\b.{3,60}\b(?:back|together)|(?:re-?)?insert|re-?fit|re-?attach|re-?mount)\b.{0,60}\bbefore (?:packag|packing|wrapping)|vor (?:der|dem) verpack\p{L}* (?:wieder )?(?:zusammen|montier)|(?:remonter|assembler)\b.{0,40}avant (?:l.emballage|le conditionnement|d.emballer)/u,
  ],
  [
    'sterilization: false',
    /sterili[sz]e\p{L}*\b.{0,30}\b(?:disassembled|dismantled|taken apart|unassembled|detached|separated)|zerlegt(?:em zustand)? (?:zu )?sterilisier|stérilise\p{L}*.{0,20}démonté/u,
  ],
  [
    'sterilization: true',
    /sterili[sz]e\p{L}*\b.{0,20}(?<!dis)(?<!un)assembled|(?:zusammengebaut|montiert)(?:em zustand)? (?:zu )?sterilisier|stérilise\p{L}*.{0,20}(?:assemblé|(?<!dé)monté)/u,
  ],
];

/** Cleaning by hand is always done. */
export const alwaysByHand =
  /^(?:pre-?)?clean\p{L}*\b.{0,40}\bmanually in any case|^(?:cleaning|washing) by hand\b[^.;]{0,10}\balways|^(?:manual|hand)[\s-](?:pre-?)?(?:cleaning|washing)(?!\p{L})[^.;]{0,40}\balways\s(?:be\s)?(?:required|necessary|needed|mandatory|performed|done|carried out)|^(?:eine )?manuelle (?:vor)?reinigung[^.;]{0,40}(?:immer|stets)[^.;]{0,20}(?:erforderlich|notwendig|durchzuführen)|^(?:un )?(?:pré-?)?nettoyage manuel[^.;]{0,40}toujours\s(?:nécessaire|obligatoire|requis)/iu;

/** Only metals of one kind together. */
export const otherMetals =
  /\b(?:mix(?:ed)?|together|contact|alongside|process(?:ed)?|load(?:ed)?|with)\b.{0,40}\b(?:other|different|dissimilar|unlike)\s+(?:kinds of\s)?metals?\b|(?:andere[nrm]?|verschiedene[nrm]?|unterschiedliche[nrm]?) metalle?n?|(?:autres|différents) métaux/i;

/** In what it travels; the group is that container. */
export const containers: readonly RegExp[] = [
  /\b(?:use)\s(?:an?\s)?((?:[\p{L}-]+,?\s(?:and\s)?){1,4}(?:container|box|bin))s?\s(?:for|during|to)\s(?:the\s)?transport/iu,
  /\bin\s(?:an?\s)?((?:[\p{L}-]+,?\s(?:and\s)?){1,4}(?:container|box|bin))s?\s(?:and|to|for)\s(?:the\s)?(?:transport|carry|carried|bring|move|taken|send)/iu,
  /\btransport(?:ed)?\b[^.;:]{0,60}?\bin\s(?:an?\s)?((?:[\p{L}-]+,?\s(?:and\s)?){0,4}(?:container|box|bin))\b/iu,
  /(?<!\p{L})in\s(?:einem\s|einer\s|eine\s)?([^.;:,]{0,40}?(?:behälter|container|box))\s[^.;:]{0,30}transportier/iu,
  /(?<!\p{L})transporter\s[^.;:]{0,40}?dans\s(?:un\s|une\s)?((?:conteneur|boîte|bac|récipient)[^.;:,]{0,40}?)[.;]?$/iu,
];

/** What is laid into a solution soaks. */
export const laidInBath =
  /^(?:[ivx]{1,4}[.)]?\s+)?(?:then\s)?(?:lay|place|put|submerge)\b[^.;]{0,60}\b(?:in|into)\s[^.;,]{0,40}\b(?:detergent|cleaner|cleaning (?:solution|agent|bath)|enzym\p{L}* (?:solution|bath)|(?:detergent|cleaning) bath)|\bin\s[^.;,]{0,40}(?:reiniger|reinigungslösung)\s(?:ein)?legen\.?$|^(?:placer|plonger|déposer)\s[^.;]{0,60}(?:détergent|solution (?:détergente|nettoyante|enzymatique))/iu;
