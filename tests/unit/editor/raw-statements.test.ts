import { describe, expect, it } from 'vitest';
import { statementsFromRaw } from '../../../server/src/editor/page/raw-statements.ts';
import { readTree } from '../../../server/src/syntax/read.ts';

const head = 'kind: device\nid: pale\nsources:\n  - {doc: D-1, rev: "02", role: device-specific}\n';

function mended(text: string): string | undefined {
  const { tree } = readTree(text);
  const made = statementsFromRaw(text, 'device', tree?.node === 'map' ? tree : undefined);
  if (made === undefined) return undefined;
  let changed = text;
  for (const { span, text: to } of made.edits.toReversed())
    changed = changed.slice(0, span.start) + to + changed.slice(span.end);
  return changed;
}

const rows: readonly (readonly [string, string, string | undefined])[] = [
  [
    'sentences in one paragraph, also over line ends',
    'statements:\n  Do not exceed 140 °C. Rinse for\n  1 min. Dry at once.\nmanual:\n  use: required\n',
    'statements:\n  s1: {doc: D-1, rev: "02", page: , quote: "Do not exceed 140 °C."}\n  s2: {doc: D-1, rev: "02", page: , quote: "Rinse for 1 min."}\n  s3: {doc: D-1, rev: "02", page: , quote: "Dry at once."}\nmanual:\n  use: required\n',
  ],
  [
    'at the left edge, with marks and bullets, after a statement; a colon in a sentence',
    'statements:\n  s1: {doc: D-1, rev: "02", page: 3, quote: "A b."}\n• Press "Start" once\n• Note: keep dry; store flat.\n',
    'statements:\n  s1: {doc: D-1, rev: "02", page: 3, quote: "A b."}\n  s2: {doc: D-1, rev: "02", page: , quote: "Press \\"Start\\" once"}\n  s3: {doc: D-1, rev: "02", page: , quote: "Note: keep dry; store flat."}\n',
  ],
  [
    'an id that something cites still is not given anew',
    'statements:\n  Rinse well.\nmanual:\n  src: s4\n',
    'statements:\n  s5: {doc: D-1, rev: "02", page: , quote: "Rinse well."}\nmanual:\n  src: s4\n',
  ],
  [
    'statements on several lines are left as they are',
    'statements:\n    s1:\n      doc: D-1\n      quote: "Rinse\n        well."\n    s2: {doc: D-1,\n      quote: "Dry well."}\n    Wipe it dry.\n',
    'statements:\n    s1:\n      doc: D-1\n      quote: "Rinse\n        well."\n    s2: {doc: D-1,\n      quote: "Dry well."}\n    s3: {doc: D-1, rev: "02", page: , quote: "Wipe it dry."}\n',
  ],
  [
    'headings and page marks give section and page; a sentence in a frame and the end of a sentence are no heading',
    'statements:\nD-1 Rev. 02   Page 1 of 2\nCLEANING\nManual cleaning:\n1. Rinse well before the\nSterilization\nDo not autoclave\nPage 2 of 2\nD-1 Rev. 02\n5.2 Storage\nKeep dry.\n',
    'statements:\n  s1: {doc: D-1, rev: "02", page: 1, section: "CLEANING: Manual cleaning", quote: "Rinse well before the Sterilization Do not autoclave"}\n  s2: {doc: D-1, rev: "02", page: 2, section: Storage, quote: "Keep dry."}\n',
  ],
  [
    'page marks at the foot, and one before a second page alone',
    'statements:\nRinse it.\n- 3 -\nDry it.\n- 4 -\n',
    'statements:\n  s1: {doc: D-1, rev: "02", page: 3, quote: "Rinse it."}\n  s2: {doc: D-1, rev: "02", page: 4, quote: "Dry it."}\n',
  ],
  [
    'what stands before page 2 stands on page 1; a page that is only named in a sentence is no mark',
    'statements:\nRinse, see page 7\n\nSeite 2\nDry it.\n',
    'statements:\n  s1: {doc: D-1, rev: "02", page: 1, quote: "Rinse, see page 7"}\n  s2: {doc: D-1, rev: "02", page: 2, quote: "Dry it."}\n',
  ],
  [
    'rows of a table are sentences of their own; numbered sections',
    'statements:\nSection 3. Automated method\nParameters:\nWash 60 °C, 5 min\nRinse 40 °C, 1 min\n\nDry it at\n60 °C.\n',
    'statements:\n  s1: {doc: D-1, rev: "02", page: , section: Automated method, quote: "Parameters:"}\n  s2: {doc: D-1, rev: "02", page: , section: Automated method, quote: "Wash 60 °C, 5 min"}\n  s3: {doc: D-1, rev: "02", page: , section: Automated method, quote: "Rinse 40 °C, 1 min"}\n  s4: {doc: D-1, rev: "02", page: , section: Automated method, quote: "Dry it at 60 °C."}\n',
  ],
  [
    'a mark of the first page below its sections is a foot; the last page has none',
    'statements:\nWARNINGS\nDo not soak.\n\nCLEANING\nRinse it.\n     page 1 of 2\nSTERILIZATION\nSteam.\n',
    'statements:\n  s1: {doc: D-1, rev: "02", page: 1, section: WARNINGS, quote: "Do not soak."}\n  s2: {doc: D-1, rev: "02", page: 1, section: CLEANING, quote: "Rinse it."}\n  s3: {doc: D-1, rev: "02", page: 2, section: STERILIZATION, quote: "Steam."}\n',
  ],
  [
    'of more pages than one behind the last foot, none is told',
    'statements:\nWARNINGS\nDo not soak.\n\nCLEANING\nRinse it.\nPage 1 of 3\nDry it.\n',
    'statements:\n  s1: {doc: D-1, rev: "02", page: 1, section: WARNINGS, quote: "Do not soak."}\n  s2: {doc: D-1, rev: "02", page: 1, section: CLEANING, quote: "Rinse it."}\n  s3: {doc: D-1, rev: "02", page: , section: CLEANING, quote: "Dry it."}\n',
  ],
  [
    'a mark below one section may be either, and no page is told',
    'statements:\nCLEANING\nRinse it.\nPage 1 of 2\nDry it.\n',
    'statements:\n  s1: {doc: D-1, rev: "02", page: , section: CLEANING, quote: "Rinse it."}\n  s2: {doc: D-1, rev: "02", page: , section: CLEANING, quote: "Dry it."}\n',
  ],
  [
    'the head of a table, its rows and what begins below them stay apart; a row goes on behind a word that wants it',
    'statements:\n             Temperature   Time     Drying\nPre-vacuum   134 °C        3 min    25 min\nGravity: not permitted.\n\nDry it at\n60   °C.\n',
    'statements:\n  s1: {doc: D-1, rev: "02", page: , quote: "Temperature   Time   Drying", not_needed: [{text: "Temperature   Time   Drying", reason: heading of a table}]}\n  s2: {doc: D-1, rev: "02", page: , quote: "Pre-vacuum   134 °C   3 min   25 min"}\n  s3: {doc: D-1, rev: "02", page: , quote: "Gravity: not permitted."}\n  s4: {doc: D-1, rev: "02", page: , quote: "Dry it at 60 °C."}\n',
  ],
  [
    'a page mark behind or before a long running head, and marks without the word',
    'statements:\nMAKER  ·  Instructions for use  ·  D-1 Rev. 02  ·  Issued 2026-03            Page 1 of 2\nRinse it.\nPage 2 of 2 | MAKER\nDry it, as page 1 of 2 has it, see page 1 of 2\nD-1 Rev. 02  ·  MAKER of small things in a large place called Somewhere     3/4\nWipe it 1/2\n',
    'statements:\n  s1: {doc: D-1, rev: "02", page: 1, quote: "Rinse it."}\n  s2: {doc: D-1, rev: "02", page: 2, quote: "Dry it, as page 1 of 2 has it, see page 1 of 2"}\n  s3: {doc: D-1, rev: "02", page: 3, quote: "Wipe it 1/2"}\n',
  ],
  [
    'a sentence in the line of a page mark is kept; of lines that every page repeats, the first is, or none where it names the document',
    'statements:\nRinse well with water of drinking quality before you dry it.        Page 1 of 2\nDO NOT AUTOCLAVE\nInstructions for use\n\nDry it.\n\nSeite 2 von 2\nDO NOT AUTOCLAVE\nInstructions for use\n\nStore it.\n',
    'statements:\n  s1: {doc: D-1, rev: "02", page: , quote: "Rinse well with water of drinking quality before you dry it."}\n  s2: {doc: D-1, rev: "02", page: 1, quote: "DO NOT AUTOCLAVE"}\n  s3: {doc: D-1, rev: "02", page: 1, quote: "Dry it."}\n  s4: {doc: D-1, rev: "02", page: 2, quote: "Store it."}\n',
  ],
  [
    'a sentence or a row of a table that ends two pages alike stays on both',
    'statements:\nRinse it.\nDry at 60 °C\n– 1 –\nRinse it.\nDry at 60 °C\n– 2 –\n',
    'statements:\n  s1: {doc: D-1, rev: "02", page: 1, quote: "Rinse it."}\n  s2: {doc: D-1, rev: "02", page: 1, quote: "Dry at 60 °C"}\n  s3: {doc: D-1, rev: "02", page: 2, quote: "Rinse it."}\n  s4: {doc: D-1, rev: "02", page: 2, quote: "Dry at 60 °C"}\n',
  ],
  [
    'a sentence goes on behind the end of a page',
    'statements:\nRinse it with\n– 1 –\n\ncold water.\nStore it.\n– 2 –\n',
    'statements:\n  s1: {doc: D-1, rev: "02", page: 1, quote: "Rinse it with cold water."}\n  s2: {doc: D-1, rev: "02", page: 2, quote: "Store it."}\n',
  ],
  [
    'a heading with a remark is a sentence too; one with a number between others is a heading whatever its words; steps and measurements are none',
    'statements:\n1 Before you begin\nRead it.\n\n2 Cleaning (always by hand)\nRinse it.\n\n3 Signs of wear\nCracks.\n\n4 Storage\n1 Press the knob\n2 Pull it\n\n5 Remove the cap\nThe cap is thrown away.\n\n5 Minutes under water\nThen dry it.\n',
    'statements:\n  s1: {doc: D-1, rev: "02", page: , section: Before you begin, quote: "Read it."}\n  s2: {doc: D-1, rev: "02", page: , section: Cleaning, quote: "Cleaning (always by hand)"}\n  s3: {doc: D-1, rev: "02", page: , section: Cleaning, quote: "Rinse it."}\n  s4: {doc: D-1, rev: "02", page: , section: Signs of wear, quote: "Cracks."}\n  s5: {doc: D-1, rev: "02", page: , section: Storage, quote: "1 Press the knob"}\n  s6: {doc: D-1, rev: "02", page: , section: Storage, quote: "2 Pull it"}\n  s7: {doc: D-1, rev: "02", page: , section: Storage, quote: "5 Remove the cap The cap is thrown away."}\n  s8: {doc: D-1, rev: "02", page: , section: Storage, quote: "5 Minutes under water Then dry it."}\n',
  ],
  [
    'columns parted by upright lines, the last cell empty',
    'statements:\nPhase | Temperature | Time | Remarks\nPre-rinse | below 45 °C | 3 min | tap water\nWash | 60 °C | 10 min | mildly alkaline\ndetergent\nDrying | max. 115 °C | 15 to 25 min |\nConnect the channel.\n',
    'statements:\n  s1: {doc: D-1, rev: "02", page: , quote: "Phase | Temperature | Time | Remarks", not_needed: [{text: "Phase | Temperature | Time | Remarks", reason: heading of a table}]}\n  s2: {doc: D-1, rev: "02", page: , quote: "Pre-rinse | below 45 °C | 3 min | tap water"}\n  s3: {doc: D-1, rev: "02", page: , quote: "Wash | 60 °C | 10 min | mildly alkaline detergent"}\n  s4: {doc: D-1, rev: "02", page: , quote: "Drying | max. 115 °C | 15 to 25 min |"}\n  s5: {doc: D-1, rev: "02", page: , quote: "Connect the channel."}\n',
  ],
  [
    'a row that ends in an empty cell, the head of a table without gaps, and a label after a title',
    'statements:\nNeedle holder, 5 mm\nMaterials: steel.\n\nStep Temperature Time Agent\nPre-wash cold 2 min -\nWash 55 °C 5 min -\nSoak it for 5 -\n10 min.\n',
    'statements:\n  s1: {doc: D-1, rev: "02", page: , quote: "Needle holder, 5 mm"}\n  s2: {doc: D-1, rev: "02", page: , quote: "Materials: steel."}\n  s3: {doc: D-1, rev: "02", page: , quote: "Step Temperature Time Agent", not_needed: [{text: "Step Temperature Time Agent", reason: heading of a table}]}\n  s4: {doc: D-1, rev: "02", page: , quote: "Pre-wash cold 2 min -"}\n  s5: {doc: D-1, rev: "02", page: , quote: "Wash 55 °C 5 min -"}\n  s6: {doc: D-1, rev: "02", page: , quote: "Soak it for 5 - 10 min."}\n',
  ],
  [
    'a row is one statement whatever its cells say, and a head of columns is no heading; a number behind a number ends nothing',
    'statements:\n1 Cleaning\n1.1 Rinse it.\n\nStep              Time (min)      Temp. (°C)      Agent\nPre-wash          2               < 40            cold tap water\nDry               20              max. 110        -\n\nSteam, 20 max. 110 - as told.\n\nRegion            Exposure                        Drying\nUSA               4 minutes at 132 °C             at least 30 minutes\n',
    'statements:\n  s1: {doc: D-1, rev: "02", page: , section: Cleaning, quote: "1.1 Rinse it."}\n  s2: {doc: D-1, rev: "02", page: , section: Cleaning, quote: "Step   Time (min)   Temp. (°C)   Agent", not_needed: [{text: "Step   Time (min)   Temp. (°C)   Agent", reason: heading of a table}]}\n  s3: {doc: D-1, rev: "02", page: , section: Cleaning, quote: "Pre-wash   2   < 40   cold tap water"}\n  s4: {doc: D-1, rev: "02", page: , section: Cleaning, quote: "Dry   20   max. 110   -"}\n  s5: {doc: D-1, rev: "02", page: , section: Cleaning, quote: "Steam, 20 max. 110 - as told."}\n  s6: {doc: D-1, rev: "02", page: , section: Cleaning, quote: "Region   Exposure   Drying", not_needed: [{text: "Region   Exposure   Drying", reason: heading of a table}]}\n  s7: {doc: D-1, rev: "02", page: , section: Cleaning, quote: "USA   4 minutes at 132 °C   at least 30 minutes"}\n',
  ],
  [
    'a heading without a topic right above its first step; a heading without text stays part of the next',
    'statements:\n2 At the point of use\nWipe it.\n\n3 Taking apart\n3.1 Open the jaws.\n3.2 Press the button.\n\n4 Cleaning\n- 1 -\nBy hand:\nRinse it.\n- 2 -\n',
    'statements:\n  s1: {doc: D-1, rev: "02", page: 1, section: At the point of use, quote: "Wipe it."}\n  s2: {doc: D-1, rev: "02", page: 1, section: Taking apart, quote: "3.1 Open the jaws."}\n  s3: {doc: D-1, rev: "02", page: 1, section: Taking apart, quote: "3.2 Press the button."}\n  s4: {doc: D-1, rev: "02", page: 2, section: Cleaning, quote: "By hand: Rinse it."}\n',
  ],
  ['nothing pasted', 'statements:\n  s1: {doc: D-1, rev: "02", page: 3, quote: "A b."}\n\n# done\n', undefined],
  ['a statement whose fields stand too far left', 'statements:\n  s1:\n  doc: D-1\n  quote: "A b."\n', undefined],
];

describe('pasted sentences become statements', () => {
  it.each(rows)('%s', (_name, text, wanted) => {
    expect(mended(head + text)).toBe(wanted === undefined ? undefined : head + wanted);
  });

  it('line ends of the file are kept', () => {
    expect(mended('kind: device\r\nstatements:\r\n  Rinse it. Dry it.\r\n')).toBe(
      'kind: device\r\nstatements:\r\n  s1: {doc: , rev: , page: , quote: "Rinse it."}\r\n  s2: {doc: , rev: , page: , quote: "Dry it."}\r\n',
    );
  });
});
