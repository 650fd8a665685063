import type { PhraseList } from './meaning.ts';

export const englishPhrases: PhraseList = [
  [
    { role: 'bound', bound: 'at_least', place: 'before-number' },
    `at least, at the least, at the very least, no fewer than, a minimum of, as a minimum, at a minimum, at minimum, as minimum, not before,
    no earlier than, starting from`,
  ],
  [
    { role: 'bound', bound: 'at_most', place: 'before-number' },
    `at most, at the most, up to, up to and including, no later than, not later than, within, a maximum of, as a
    maximum, at a maximum, at maximum, limited to, limit of, limit to, upper limit, no more often than`,
  ],
  [{ role: 'bound', bound: 'at_least', place: 'either' }, 'min, minimal, minimally, lower limit'],
  [{ role: 'bound', bound: 'at_most', place: 'either' }, 'maximal, maximally, maximum permitted, maximum allowable'],
  [
    { role: 'bound', bound: 'at_least', place: 'after-number' },
    'or more, and more, or above, and above, or over, or greater, and greater, and up, or better',
  ],
  [{ role: 'bound', bound: 'at_least', place: 'after-number', fits: 'time' }, 'or longer, and longer'],
  [
    { role: 'bound', bound: 'at_least', place: 'after-number', fits: 'temperature' },
    'or higher, and higher, or hotter',
  ],
  [
    { role: 'bound', bound: 'at_most', place: 'after-number' },
    'or less, and less, or below, and below, or under, or fewer, or smaller',
  ],
  [{ role: 'bound', bound: 'at_most', place: 'after-number', fits: 'time' }, 'or shorter, and shorter'],
  [
    { role: 'bound', bound: 'at_most', place: 'after-number', fits: 'temperature' },
    'or lower, and lower, or cooler, or colder',
  ],
  [
    { role: 'bound', bound: 'about', place: 'either' },
    `about, approximately, approx, around, roughly, typically, nominally, nominal, in the region of, on average,
    usually, or so, or thereabouts`,
  ],
  [{ role: 'bound', bound: 'exactly', place: 'either' }, 'exactly, precisely, neither more nor less than'],
  [
    { role: 'compare', side: 'over', place: 'word' },
    'more than, greater than, over, above, in excess of, beyond, more often than, heavier than',
  ],
  [{ role: 'compare', side: 'over', place: 'word', fits: 'time' }, 'longer than'],
  [{ role: 'compare', side: 'over', place: 'word', fits: 'temperature' }, 'higher than, hotter than, warmer than'],
  [
    { role: 'compare', side: 'under', place: 'word' },
    'less than, fewer than, below, under, lower than, smaller than, lighter than',
  ],
  [{ role: 'compare', side: 'under', place: 'word', fits: 'time' }, 'shorter than'],
  [{ role: 'compare', side: 'under', place: 'word', fits: 'temperature' }, 'cooler than, colder than'],
  [{ role: 'compare', side: 'over', place: 'verb' }, 'exceed, exceeds, exceeded, exceeding, surpass, surpassed'],
  [{ role: 'compare', side: 'under', place: 'verb' }, 'fall below, falls below, drop below, drops below'],
  [
    { role: 'negation', kind: 'prohibition', scope: 'forward' },
    `do not, don' t, never, avoid, avoids, avoiding, no, nothing, neither, nor, instead of, rather than, refrain from, not to, does
    not, doesn' t, keep away from, keep out of, and not,
    none of, neither of, no part of`,
  ],
  [
    { role: 'negation', kind: 'prohibition', scope: 'both' },
    `not, cannot, can' t, mustn' t, shouldn' t, isn' t, aren' t, be avoided, is prohibited, are prohibited,
    never be, never permitted, never allowed, never acceptable, prohibited, forbidden, contraindicated, contra indicated, unsuitable, disallowed, incompatible, excluded, under
    no circumstances, voids the warranty`,
  ],
  [
    { role: 'negation', kind: 'not-required', scope: 'both' },
    `not necessary, not required, not needed, need not, not mandatory, not essential, not obligatory, unnecessary, no
    need, does not need, do not need, does not require, do not require, not have to, optional, needn' t`,
  ],
  [
    { role: 'negation', kind: 'exception', scope: 'both' },
    'except, excepting, with the exception of, exception, unless, excluding, apart from, other than, but not',
  ],
  [{ role: 'negation', kind: 'without', scope: 'forward' }, 'without'],
  [
    { role: 'idiom' },
    `once more, once again, not only, not omit, not skip, do not omit, do not skip, never omit, never skip, not be omitted, not be skipped,
    cannot be omitted, not forbidden, not prohibited, no longer visible, no visible, not visible, whether or not, if not, no sooner, not limited to, no
    matter, above mentioned, see above, described above, see below, shown below, described below, not later, no
    residue, no residues, no soil, at once, rinse aid, clean apart from, cleaned apart from, wash apart from, washed apart from, keep apart
    from, kept apart from, process apart from, processed apart from, apart from other instruments, apart from all other
    instruments, apart from the other instruments, apart from general instruments`,
  ],
  [
    { role: 'harm' },
    `damage, damages, damaged, destroy, destroys, harm, harms, discolour, melt, crack, shorten, shortens, impair,
    weaken, weakens, void, degrade, degrades, deform, deforms, fix, fixes, coagulate, coagulates`,
  ],
  [
    { role: 'join', join: 'and' },
    'and, as well as, in addition to, both, together with, combined with, also, plus, and also',
  ],
  [
    { role: 'join', join: 'then' },
    `then, followed by, and then, subsequently, afterwards, thereafter, before, prior to, after, next, preceded by,
    finally, on completion, upon completion, always precedes, precedes, is not sufficient, is not enough, not
    sufficient on its own`,
  ],
  [
    { role: 'join', join: 'or' },
    `or, alternatively, either, as an alternative, as an alternative to, or else, instead, if not available, is not
    available, is unavailable, not available, if preferred, in place of, optionally`,
  ],
  [{ role: 'join', join: 'and/or' }, 'and / or, or and'],
  [
    { role: 'flag', flag: 'total-time' },
    `cycle time, cycle times, total time, total cycle, total cycle time, cycle duration, total duration, overall
    time, overall cycle time, total process time, process time, total run time, run time, complete cycle, entire
    cycle, whole cycle, turnaround time, door to door, cycle length, full process time, total processing time,
    overall duration, cycle lasts, cycle takes`,
  ],
  [
    { role: 'flag', flag: 'half-cycle' },
    `half cycle, half cycles, validation cycle, validation cycles, half exposure, half time, qualification cycle,
    fractional cycle, overkill half cycle, half of the exposure`,
  ],
  [
    { role: 'flag', flag: 'full-cycle' },
    `full cycle, routine cycle, full exposure, routine use, routine exposure, routine processing, recommended cycle,
    in use, full sterilization cycle`,
  ],
  [{ role: 'flag', flag: 'prion' }, 'spongiform'],
  [
    { role: 'flag', flag: 'validated-with' },
    `validated with, validated using, validated in, validated for, were validated, was validated, has been validated,
    tested with, tested using, tested in, qualified with, qualified using, validation was performed, validated`,
  ],
  [{ role: 'flag', flag: 'only' }, 'only, exclusively, solely, restricted to, no other'],
  [
    { role: 'stage', stage: 'manual' },
    `manual, manually, by hand, hand wash, hand washing, hand clean, hand cleaning, hand scrub, preclean*, pre
    clean*, pre cleaning`,
  ],
  [{ role: 'stage', stage: 'ultrasonic' }, 'ultrasonic*, ultrasound, sonicat*, sonic, sonication, ultra sonic'],
  [
    { role: 'stage', stage: 'mechanical' },
    `washer disinfector, washer disinfectors, washer, washers, machine, mechanical, mechanically, automated,
    automatic, automatically, automated washer, automated washer disinfector, automatic washer, mechanical washer,
    machine wash*, washing machine, thermal washer`,
  ],
  [{ role: 'stage', stage: 'immersion' }, 'immerse*, immersion, immersing, submerg*, submersion'],
  [{ role: 'stage', stage: 'soak' }, 'soak*'],
  [{ role: 'stage', stage: 'brush' }, 'brush*, scrub*'],
  [{ role: 'stage', stage: 'flush' }, 'flush*, irrigat*'],
  [{ role: 'stage', stage: 'wipe' }, 'wipe*, wiping'],
  [{ role: 'stage', stage: 'rinse' }, 'rins*'],
  [
    { role: 'stage', stage: 'disinfection' },
    'disinfect, disinfected, disinfecting, disinfection, thermal disinfection, disinf, thermal disinf',
  ],
  [{ role: 'stage', stage: 'dry' }, 'dry, dried, drying, dries'],
  [{ role: 'stage', stage: 'inspection' }, 'inspect*'],
  [
    { role: 'stage', stage: 'lubrication' },
    'lubricat*, lubricant*, oil, oils, oiled, oiling, grease the, greased, instrument milk',
  ],
  [{ role: 'stage', stage: 'packaging' }, 'pack, packed, packag*, packing'],
  [{ role: 'stage', stage: 'steam' }, 'steam*, autoclav*, moist heat'],
  [{ role: 'stage', stage: 'gravity' }, 'gravity*'],
  [
    { role: 'stage', stage: 'prevac' },
    'pre vacuum, prevac*, pre vac, dynamic air removal, active air removal, forced air removal, porous load, fractionated vacuum, vacuum',
  ],
  [{ role: 'stage', stage: 'iuss' }, 'immediate use'],
  [
    { role: 'stage', stage: 'vh2o2' },
    'hydrogen peroxide, peroxide, vaporised hydrogen peroxide, vaporized hydrogen peroxide, gas plasma',
  ],
  [{ role: 'stage', stage: 'eo' }, 'ethylene oxide'],
  [{ role: 'stage', stage: 'formaldehyde' }, 'formaldehyde'],
  [{ role: 'stage', stage: 'dry-heat' }, 'dry heat, hot air'],
  [{ role: 'stage', stage: 'wrap' }, 'wrap*, double wrap*'],
  [{ role: 'stage', stage: 'pouch' }, 'pouch*, peel pack*'],
  [{ role: 'stage', stage: 'disassembly' }, 'disassembl*, dismantl*, take apart'],
  [{ role: 'stage', stage: 'stacking' }, 'stack*'],
  [
    { role: 'reference' },
    `page, pages, p, pp, figure, figures, step, steps, chapter, table, tables, item no, catalogue, catalog, catalogue
    number, catalog number, catalogue no, article, part number, number, numbers, revision, rev, edition, clause,
    annex, appendix, type, class, model, serial, port, program, programme, grade, level, size, option, note, group,
    category, drawing, document, paragraph, series, part, code, position, technical report, tir`,
  ],
  [{ role: 'range-open' }, 'between, from, range of, in the range, range'],
  [{ role: 'range-to' }, 'to, through, until'],
  [{ role: 'contrast' }, 'but, however, although, whereas, while, otherwise'],
  [{ role: 'condition' }, 'if, when, where, whenever, in case'],
  [{ role: 'until' }, 'until, till'],
  [
    { role: 'difference' },
    `tolerance, tolerance of, difference, difference of, differ, deviate, deviation, deviation of, vary, band, drift,
    fluctuate, fluctuation`,
  ],
  [{ role: 'number', amount: 1 }, 'one'],
  [{ role: 'number', amount: 2 }, 'two'],
  [{ role: 'number', amount: 3 }, 'three'],
  [{ role: 'number', amount: 4 }, 'four'],
  [{ role: 'number', amount: 5 }, 'five'],
  [{ role: 'number', amount: 6 }, 'six'],
  [{ role: 'number', amount: 7 }, 'seven'],
  [{ role: 'number', amount: 8 }, 'eight'],
  [{ role: 'number', amount: 9 }, 'nine'],
  [{ role: 'number', amount: 10 }, 'ten'],
  [{ role: 'number', amount: 11 }, 'eleven'],
  [{ role: 'number', amount: 12 }, 'twelve, a dozen'],
  [{ role: 'number', amount: 13 }, 'thirteen'],
  [{ role: 'number', amount: 14 }, 'fourteen'],
  [{ role: 'number', amount: 15 }, 'fifteen'],
  [{ role: 'number', amount: 16 }, 'sixteen'],
  [{ role: 'number', amount: 17 }, 'seventeen'],
  [{ role: 'number', amount: 18 }, 'eighteen'],
  [{ role: 'number', amount: 19 }, 'nineteen'],
  [{ role: 'number', amount: 20 }, 'twenty'],
  [{ role: 'number', amount: 30 }, 'thirty'],
  [{ role: 'number', amount: 45 }, 'forty five'],
  [{ role: 'number', amount: 60 }, 'sixty'],
  [{ role: 'number', amount: 90 }, 'ninety'],
  [{ role: 'number', amount: 0.5 }, 'half an'],
  [{ role: 'times', amount: 1 }, 'once'],
  [{ role: 'times', amount: 2 }, 'twice'],
  [{ role: 'times', amount: 3 }, 'thrice'],
];
