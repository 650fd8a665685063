import type { PhraseList } from './meaning.ts';

export const frenchPhrases: PhraseList = [
  [
    { role: 'bound', bound: 'at_least', place: 'before-number' },
    `d' au moins, minimum de, un minimum de, à partir de, supérieur ou égal à, supérieure ou
    égale à, supérieures ou égales à, minimale de, minimal de, pas avant`,
  ],
  [
    { role: 'bound', bound: 'at_most', place: 'before-number' },
    `tout au plus,
    ne dépassant pas, ne dépasse pas, ne dépassent pas, ne dépassera pas, n' excédant pas, n' excède pas, n' excédera pas, jusqu' à, jusqu' a, maximum de, un maximum de, dans les, dans un délai de, au
    plus tard, inférieur ou égal à, inférieure ou égale à, limité à, limitée à, maximale de, maximal de, jusqu' à un
    maximum de`,
  ],
  [{ role: 'bound', bound: 'at_least', place: 'either' }, 'min, minimale, minimal, minimales, au moins, au minimum'],
  [{ role: 'bound', bound: 'at_most', place: 'either' }, 'maximale, maximal, maximales, au plus, au maximum'],
  [
    { role: 'bound', bound: 'at_least', place: 'after-number' },
    'ou plus, et plus, ou davantage, et au delà, ou au delà',
  ],
  [{ role: 'bound', bound: 'at_least', place: 'after-number', fits: 'time' }, 'ou plus longtemps'],
  [{ role: 'bound', bound: 'at_most', place: 'after-number' }, 'ou moins, et moins'],
  [
    { role: 'bound', bound: 'about', place: 'either' },
    `environ, approximativement, env, à peu près, généralement, typiquement, d' environ, en moyenne, de l' ordre de,
    aux alentours de, habituellement`,
  ],
  [{ role: 'bound', bound: 'exactly', place: 'either' }, 'exactement, précisément, très exactement'],
  [
    { role: 'compare', side: 'over', place: 'word' },
    `plus de, supérieur à, supérieure à, supérieures à, supérieurs à, au dessus de, au delà de, excédant, dépassant,
    plus d'`,
  ],
  [{ role: 'compare', side: 'over', place: 'word', fits: 'time' }, 'plus longtemps que, plus longue que'],
  [
    { role: 'compare', side: 'under', place: 'word' },
    "moins de, inférieur à, inférieure à, inférieures à, inférieurs à, au dessous de, en dessous de, moins d'",
  ],
  [{ role: 'compare', side: 'over', place: 'verb' }, 'dépass*, excéd*, excèd*'],
  [{ role: 'compare', side: 'under', place: 'verb' }, 'descendre en dessous de, descendre sous'],
  [
    { role: 'negation', kind: 'prohibition', scope: 'forward' },
    `ne pas, ne jamais, éviter, évitez, ni, aucun, aucune, au lieu de, plutôt que, pas de, pas d', jamais de,
    proscrire, non`,
  ],
  [
    { role: 'negation', kind: 'prohibition', scope: 'both' },
    `pas, jamais, interdit, interdite, interdits, interdites, proscrit, proscrite, à proscrire, déconseillé,
    déconseillée, contre indiqué, contre indiquée, à éviter, être évité, être évitée, exclu, exclue, en aucun cas,
    incompatible, incompatibles, inadapté, inadaptée`,
  ],
  [
    { role: 'negation', kind: 'not-required', scope: 'both' },
    `pas nécessaire, pas nécessaires, pas obligatoire, pas requis, pas requise, pas exigé, pas exigée, pas
    indispensable, facultatif, facultative, inutile, superflu, superflue, pas besoin, optionnel, optionnelle`,
  ],
  [
    { role: 'negation', kind: 'exception', scope: 'both' },
    "sauf, excepté, exceptés, à l' exception, hormis, à moins, exception",
  ],
  [{ role: 'negation', kind: 'without', scope: 'forward' }, 'sans'],
  [
    { role: 'idiom' },
    `non seulement, ne pas omettre, pas être omis, pas être omise, pas interdit, pas interdite, pas seulement, aucun résidu, aucune souillure, aucune trace, plus aucun, plus aucune, pas
    visible, voir ci dessus, non stérile, non tissé, non tissés, non pelucheux, non pelucheuse, non pelucheuses, en
    plus, de plus, non abrasif, non abrasive, non moussant, sans résidu, sans peluche, sans peluches, pas de résidu,
    pas de résidus, non ionique, non ioniques`,
  ],
  [{ role: 'harm' }, 'endommag*, détérior*, détrui*, altér*, abîm*, coagul*, fixe, fixent, déform*'],
  [
    { role: 'join', join: 'and' },
    'et, ainsi que, en plus de, également, en complément de, de même que, associé à, associée à',
  ],
  [
    { role: 'join', join: 'then' },
    `puis, ensuite, et puis, suivi de, suivie de, suivis de, suivi par, suivi d', suivie d', après, avant, et
    ensuite, puis ensuite, enfin, précédé de, précédée de, précédé d', à la suite, ne suffit pas, n' est pas
    suffisant, n' est pas suffisante, préalablement`,
  ],
  [
    { role: 'join', join: 'or' },
    "ou, ou bien, soit, alternativement, à défaut, en alternative, n' est pas disponible, sinon, en remplacement",
  ],
  [{ role: 'join', join: 'and/or' }, 'et / ou, et ou'],
  [
    { role: 'flag', flag: 'total-time' },
    `durée totale, temps total, durée du cycle, temps de cycle, durée totale du cycle, cycle complet, durée de cycle,
    durée globale, temps total du cycle, durée du programme, durée complète du cycle`,
  ],
  [
    { role: 'flag', flag: 'half-cycle' },
    `demi cycle, demi cycles, cycle de validation, cycles de validation, demi temps, cycle de qualification, moitié
    du cycle`,
  ],
  [{ role: 'flag', flag: 'full-cycle' }, 'cycle de routine, cycle intégral, cycle entier, en routine, cycle normal'],
  [{ role: 'flag', flag: 'prion' }, 'atnc, mcj, vmcj, esst, spongiform*'],
  [
    { role: 'flag', flag: 'validated-with' },
    `validé avec, validée avec, validés avec, validées avec, validé en, validée en, validé, validée, testé avec,
    testée avec, validation a été`,
  ],
  [
    { role: 'flag', flag: 'only' },
    'uniquement, seulement, exclusivement, seul, seule, seuls, seules, ne que, réservé à',
  ],
  [{ role: 'stage', stage: 'manual' }, 'manuel*, à la main, manuellement, pré nettoyage, prénettoyage, pré nettoyer'],
  [{ role: 'stage', stage: 'ultrasonic' }, 'ultrason*, ultra sons, ultra son, bac à ultrasons, cuve à ultrasons'],
  [
    { role: 'stage', stage: 'mechanical' },
    `laveur désinfecteur, laveurs désinfecteurs, laveur*, machine, en machine, automatique*, automatisé*, mécanique*,
    lave instruments, automate, thermodésinfecteur`,
  ],
  [{ role: 'stage', stage: 'immersion' }, 'immerg*, immersion'],
  [{ role: 'stage', stage: 'soak' }, 'tremp*'],
  [{ role: 'stage', stage: 'brush' }, 'bross*, écouvillon*'],
  [{ role: 'stage', stage: 'flush' }, 'irrigu*, irrigation, purg*'],
  [{ role: 'stage', stage: 'wipe' }, 'essuy*, essuie*'],
  [{ role: 'stage', stage: 'rinse' }, 'rinc*, rinç*'],
  [{ role: 'stage', stage: 'disinfection' }, 'désinfect*, thermodésinfection'],
  [{ role: 'stage', stage: 'dry' }, 'séch*, sèch*, sec, secs'],
  [{ role: 'stage', stage: 'inspection' }, 'inspect*, contrôl*'],
  [{ role: 'stage', stage: 'lubrication' }, 'lubrifi*, huil*, graiss*, lait'],
  [{ role: 'stage', stage: 'packaging' }, 'emball*, conditionn*'],
  [{ role: 'stage', stage: 'steam' }, 'vapeur, autoclav*, chaleur humide'],
  [{ role: 'stage', stage: 'gravity' }, 'gravit*'],
  [{ role: 'stage', stage: 'prevac' }, 'prévide, pré vide, vide fractionné, vide préalable, prévacuum'],
  [{ role: 'stage', stage: 'vh2o2' }, "peroxyde d' hydrogène, peroxyde, eau oxygénée, plasma gazeux"],
  [{ role: 'stage', stage: 'eo' }, "oxyde d' éthylène, oe"],
  [{ role: 'stage', stage: 'formaldehyde' }, 'formaldéhyde'],
  [{ role: 'stage', stage: 'dry-heat' }, 'chaleur sèche, air chaud'],
  [{ role: 'stage', stage: 'container' }, 'conteneur*'],
  [{ role: 'stage', stage: 'wrap' }, 'non tissé, feuille*, double emballage'],
  [{ role: 'stage', stage: 'pouch' }, 'sachet*, gaine*'],
  [{ role: 'stage', stage: 'disassembly' }, 'démont*, désassembl*'],
  [{ role: 'stage', stage: 'stacking' }, 'empil*, superpos*'],
  [
    { role: 'reference' },
    `page, pages, p, figure, figures, étape, étapes, chapitre, tableau, réf, référence, référence n, numéro, n, n°,
    article, révision, rév, édition, annexe, type, classe, modèle, série, programme, point, paragraphe, groupe,
    niveau, taille, norme, nf`,
  ],
  [{ role: 'range-open' }, "entre, de, plage de, comprise entre, compris entre, d'"],
  [{ role: 'range-to' }, 'à, a'],
  [{ role: 'contrast' }, 'mais, cependant, toutefois, tandis que, en revanche'],
  [{ role: 'condition' }, "si, lorsque, lorsqu', s', quand, en cas de, en cas"],
  [{ role: 'until' }, "jusqu' à ce que, jusqu' à ce qu', jusqu' à disparition, jusqu' à élimination"],
  [
    { role: 'difference' },
    'tolérance, tolérance de, écart, écart de, différence de, variation, variation de, variations de',
  ],
  [{ role: 'number', amount: 2 }, 'deux'],
  [{ role: 'number', amount: 3 }, 'trois'],
  [{ role: 'number', amount: 4 }, 'quatre'],
  [{ role: 'number', amount: 5 }, 'cinq'],
  [{ role: 'number', amount: 6 }, 'six'],
  [{ role: 'number', amount: 7 }, 'sept'],
  [{ role: 'number', amount: 8 }, 'huit'],
  [{ role: 'number', amount: 9 }, 'neuf'],
  [{ role: 'number', amount: 10 }, 'dix'],
  [{ role: 'number', amount: 11 }, 'onze'],
  [{ role: 'number', amount: 12 }, 'douze'],
  [{ role: 'number', amount: 13 }, 'treize'],
  [{ role: 'number', amount: 14 }, 'quatorze'],
  [{ role: 'number', amount: 15 }, 'quinze'],
  [{ role: 'number', amount: 16 }, 'seize'],
  [{ role: 'number', amount: 17 }, 'dix sept'],
  [{ role: 'number', amount: 18 }, 'dix huit'],
  [{ role: 'number', amount: 19 }, 'dix neuf'],
  [{ role: 'number', amount: 20 }, 'vingt'],
  [{ role: 'number', amount: 30 }, 'trente'],
  [{ role: 'number', amount: 0.5 }, 'une demi'],
];
