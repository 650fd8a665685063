import { asks, type CategoryRow, fails, meets, note } from './direction-row.ts';

/*
 * The second half of the direction table: what is not a number. Each parameter has the cases that can occur, with the outcome, the reason
 * and who can settle it. Data, like directions.ts.
 */

const c8 = 'expert procedure';
const practice = 'practice';

/** Parameters that are not numbers. Categories never substitute for one another, in either direction. */
export const categoryRows = {
  identity: {
    parameter: 'identity',
    title: 'Which instruction',
    source: c8,
    cases: {
      'out-of-scope': fails(
        'items of this kind are outside what is judged here; follow their own library',
        'manufacturer',
      ),
      'other-situation': fails(
        'this option is only for the situation the page names, not for routine use',
        'infection-prevention',
      ),
      'evidence-only': fails('a half cycle or test figure is never run', 'manufacturer'),
      'other-market': asks('the instruction is for other markets'),
      'cycle-of-other-market': fails('the page gives this cycle for other markets than ours', 'manufacturer'),
      'not-sterilized': fails('the page forbids to sterilize it', 'manufacturer'),
      coupled: asks('this is valid only together with another choice, which must be checked', 'educator'),
      unclear: asks('the page cannot be carried out as written'),
      conditional: note('this holds only in the situation the page names', 'educator'),
    },
  },
  modality: {
    parameter: 'modality',
    title: 'Method',
    source: c8,
    cases: {
      same: meets('the same method and the same air removal'),
      different: fails(
        'another method or another kind of air removal is another instruction, in either direction',
        'manufacturer',
      ),
      'flush-pulse': asks(
        'flush-pulse and pre-vacuum both remove air actively; whether the maker tested ours is for the maker to say',
      ),
      'not-given': asks('the option does not say by which method', 'educator'),
    },
  },
  context: {
    parameter: 'context',
    title: 'Use of the cycle',
    source: c8,
    cases: {
      same: meets('for the same use'),
      different: fails(
        'an option for stored packs and one for immediate use never stand in for each other',
        'manufacturer',
      ),
    },
  },
  'immediate-use': {
    parameter: 'immediate-use',
    title: 'Immediate use',
    source: c8,
    cases: {
      offered: meets('the page offers immediate use'),
      'not-offered': fails(
        'the page offers no immediate use; it is never derived by leaving out the drying',
        'manufacturer',
      ),
    },
  },
  prohibition: {
    parameter: 'prohibition',
    title: 'Prohibition',
    source: c8,
    cases: {
      forbidden: fails('the page forbids it; no other document lifts that', 'manufacturer'),
      conditional: note('the page forbids it in the situation it names'),
      unclear: asks('the value that goes with the prohibition cannot be read', 'educator'),
    },
  },
  packaging: {
    parameter: 'packaging',
    title: 'Packaging',
    source: 'what the page’s words mean',
    cases: {
      named: meets('the page names this packaging'),
      restricted: fails('the page allows only the packaging it names', 'manufacturer'),
      'outside-class': fails('the page asks for packaging of another kind', 'manufacturer'),
      'tested-otherwise': asks(
        'the page tells what it was tested with; that neither allows nor forbids another packaging',
      ),
      'covered-by-packaging': note(
        'the page was tested with another packaging, and the maker of ours covers devices of this kind',
      ),
      'relation-unclear': asks(
        'the page names packagings, but the file does not say whether it restricts to them',
        'educator',
      ),
      silent: asks('the document is silent on packaging'),
      'not-encoded': asks('the file says nothing about packaging', 'educator'),
      unclear: asks('the page cannot be carried out as written'),
      'double-not-stated': asks('double packing is not stated by the maker of the packaging', 'vendor'),
      'double-forbidden': fails('the maker of the packaging forbids double packing', 'vendor'),
      'inside-not-stated': asks('the maker of the inner packaging does not say that it may lie inside a set', 'vendor'),
      'inside-forbidden': fails('the maker of the inner packaging forbids it inside a set', 'vendor'),
      discontinued: note('no longer made: what is in stock runs out', 'vendor'),
    },
  },
  'container-cycle': {
    parameter: 'container-cycle',
    title: 'Packaging and cycle',
    source: c8,
    cases: {
      covered: meets('the maker of the packaging gives instructions for this kind of cycle'),
      'not-covered': fails('the maker of the packaging gives no instructions for this kind of cycle', 'vendor'),
      'flush-pulse': asks('the maker of the packaging names the other kind of active air removal', 'vendor'),
      'listed-not': fails('the maker of the packaging does not list this sterilizer and cycle', 'vendor'),
      'not-encoded': asks('the file of the packaging names no cycles', 'educator'),
      conditional: asks('the maker of the packaging covers this cycle only in the situation named', 'vendor'),
    },
  },
  'peroxide-cycle': {
    parameter: 'peroxide-cycle',
    title: 'Listed sterilizer and cycle',
    source: c8,
    cases: {
      listed: meets('the page lists this sterilizer and this cycle'),
      'not-listed': fails(
        'the page does not list this sterilizer and cycle; a stronger cycle does not include a weaker one',
        'manufacturer',
      ),
      'machine-only': asks('the page lists the sterilizer but not which of its cycles'),
      'not-encoded': asks('the file does not say which sterilizers and cycles the page lists', 'educator'),
      'lumens-unknown': asks('the cycle does not say which lumens it covers', 'vendor'),
    },
  },
  pressure: {
    parameter: 'pressure',
    title: 'Pressure',
    source: 'physics',
    cases: {
      informational: note('pressure follows temperature and a gauge depends on altitude: for information only'),
    },
  },
  lumen: {
    parameter: 'lumen',
    title: 'Lumen',
    source: practice,
    cases: {
      covered: meets('every lumen lies inside the limits'),
      'size-unknown': asks('the file does not give the size of the lumen', 'educator'),
      'material-unknown': asks(
        'the limits depend on the material of the lumen, which the file does not give',
        'educator',
      ),
      'material-not-covered': asks('the limits name other materials', 'vendor'),
      'ends-not-covered': asks('the limits are for other ends of the lumen', 'vendor'),
    },
  },
  mass: {
    parameter: 'mass',
    title: 'Mass',
    source: c8,
    cases: {
      unknown: asks('the set has not been weighed', 'educator'),
      'gross-or-net': asks(
        'the limit is for the contents alone, and the mass of the packaging is not known',
        'educator',
      ),
    },
  },
  filter: {
    parameter: 'filter',
    title: 'Filter, valve or bottom',
    source: practice,
    cases: {
      same: meets('the part fitted is one that is named'),
      different: fails('the part fitted is not the one for this kind of cycle', 'vendor'),
      unknown: asks('the set does not say which part is fitted', 'educator'),
    },
  },
  accessory: {
    parameter: 'accessory',
    title: 'Accessory',
    source: practice,
    cases: {
      listed: meets('accepted by its maker'),
      'not-listed': asks(
        'mats, liners and guards change drying and the way in for steam; this one is not named as accepted',
        'vendor',
      ),
      forbidden: fails('named as not accepted', 'vendor'),
    },
  },
  cellulose: {
    parameter: 'cellulose',
    title: 'Paper or cotton',
    source: practice,
    cases: { present: fails('paper and cotton absorb peroxide and weaken or stop the cycle') },
  },
  'machine-step': {
    parameter: 'machine-step',
    title: 'Machine step',
    source: c8,
    cases: {
      allowed: meets('the page allows it'),
      forbidden: fails('the page forbids it', 'manufacturer'),
      silent: asks('the document is silent on it'),
      unclear: asks('the page cannot be carried out as written'),
      'phase-missing': fails(
        'the page asks for a phase that the cycle does not have; the whole sequence is the instruction',
      ),
      'phase-forbidden': fails('the page forbids a phase that the cycle has'),
      'not-conforming': asks(
        'the page asks for a machine that meets a standard, and the file does not say that ours does',
        'biomed',
      ),
      'rack-unknown': asks('the page asks for a certain rack', 'educator'),
      'value-unknown': asks('the file of the machine does not give this value', 'biomed'),
      irrigated: meets('the channels are flushed during the bath'),
      'not-irrigated': fails(
        'an air-filled channel is not cleaned by sound, and the bath has no connection for it',
        'biomed',
      ),
      'no-disinfection': fails('the cycle has no thermal phase', 'biomed'),
      'a0-accepted': note('less than the pair on the page, but the heat dose is accepted in its place and is reached'),
      'a0-unknown': asks('the heat dose cannot be worked out from what the file gives', 'biomed'),
    },
  },
  connector: {
    parameter: 'connector',
    title: 'Connectors',
    source: practice,
    cases: {
      enough: meets('the rack has enough'),
      'several-loads': note(
        'the rack has enough for one device but not for all of them at once: wash in several loads',
      ),
      none: fails('the rack has none of this kind: spray does not enter a narrow bore', 'biomed'),
      'too-few': fails('the rack has too few for one device', 'biomed'),
      unknown: asks('the file of the machine does not say which connections its rack has', 'biomed'),
    },
  },
  chemistry: {
    parameter: 'chemistry',
    title: 'Chemistry',
    source: practice,
    cases: {
      suitable: meets('of the class the page asks for'),
      discontinued: fails('no longer supplied'),
      'wrong-method': fails('not labelled for this way of cleaning', 'vendor'),
      'method-unknown': asks('the file does not say for which ways of cleaning it is labelled', 'educator'),
      'wrong-class': fails('of another class than the page asks for; classes never stand in for one another'),
      'class-unknown': asks('its class is not known well enough to compare', 'educator'),
      'class-not-measurable': asks('the page asks for a property that cannot be measured'),
      'not-named': asks('the page names other products'),
      'harms-material': fails('named as unsuitable for a material of this item', 'vendor'),
      'holds-excluded': fails('holds an ingredient that the page excludes', 'manufacturer'),
      'contents-unknown': asks('its ingredients are not in the file, and the page excludes some', 'educator'),
      unknown: asks('nothing is known here about this agent', 'educator'),
      'none-dosed': fails('no detergent is used'),
      'partner-missing': fails('it must be followed by a step that is missing'),
      'ph-unknown': asks('its pH as used is not in the file', 'vendor'),
      'ph-basis': asks('the pH is given without saying whether concentrate or in use', 'vendor'),
    },
  },
  'water-grade': {
    parameter: 'water-grade',
    title: 'Water',
    source: c8,
    cases: {
      unknown: asks('it is not known which water feeds this rinse', 'engineering'),
      'not-measured': asks(
        'a grade is a measurement, not a label on a tap: this value is not in the file',
        'engineering',
      ),
      'grade-undefined': asks('the site does not say what this grade of water must be like', 'engineering'),
      'not-sterile': fails('water that is not sterile where sterile water is asked for', 'engineering'),
      'plain-water': fails('ordinary tap water where a purer grade is asked for', 'engineering'),
      stale: asks('the last result is missing or too old', 'engineering'),
      withdrawn: fails('this water point is out of use', 'engineering'),
    },
  },
  'manual-step': {
    parameter: 'manual-step',
    title: 'Step by hand',
    source: c8,
    cases: {
      present: meets('the procedure has the step'),
      missing: fails('the procedure does not have the step'),
      'value-missing': asks('the procedure does not say how much, how long or how often'),
      'port-forgotten': fails('the procedure leaves out this port'),
      forbidden: fails('the page forbids it', 'manufacturer'),
      unclear: asks('the page cannot be carried out as written'),
    },
  },
  immersion: {
    parameter: 'immersion',
    title: 'Immersion',
    source: practice,
    cases: {
      forbidden: fails('the page forbids to put it under liquid', 'manufacturer'),
      'too-deep': fails('the page allows only a part of it under liquid', 'manufacturer'),
      'extent-unknown': asks('the procedure does not say how far it goes under liquid', 'educator'),
    },
  },
  brush: {
    parameter: 'brush',
    title: 'Brush',
    source: practice,
    cases: {
      'not-given': asks('the procedure does not say which brush'),
      'too-thin': fails('thinner than the bore: it does not touch the wall'),
      'too-thick': fails('thicker than the site accepts for this bore'),
      'too-short': fails('shorter than the lumen: the far end is not reached'),
      fits: meets('it touches the wall and reaches the end'),
    },
  },
  evidence: {
    parameter: 'evidence',
    title: 'Evidence',
    source: c8,
    cases: {
      current: meets('qualified and current'),
      'not-qualified': fails('no current qualification: a programmed cycle is only a wish', 'biomed'),
      'machine-only': asks('the machine has a qualification date, but this cycle has none of its own', 'biomed'),
      future: fails('its date lies in the future', 'biomed'),
      'changed-after': fails('changed after it was qualified', 'biomed'),
      expired: fails('the qualification has run out', 'biomed'),
      withdrawn: fails('taken out of use', 'manager'),
      proposed: fails('not in the department: only proposed', 'manager'),
      'not-tested': fails('no test of cleaning: a cycle number is no evidence', 'biomed'),
      'test-stale': fails('the last test of cleaning is older than the site accepts', 'biomed'),
    },
  },
} as const satisfies Readonly<Record<string, CategoryRow>>;
