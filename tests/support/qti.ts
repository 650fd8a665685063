import type { XmlElement } from './xml.ts';
import { readXml } from './xml.ts';

/*
 * The part of the published structure of QTI 3.0 and of its content packages that single-choice items use: which children in which order,
 * which attributes are needed, which words they take. Written from the standard's information model, not from the code that exports.
 */

interface Model {
  /** Children by name as a regular expression over `name ` repeated. */
  readonly children: RegExp;
  readonly required?: readonly string[];
  readonly optional?: readonly string[];
  /** Words of attributes. */
  readonly words?: Readonly<Record<string, RegExp>>;
  /** True where text stands in it. */
  readonly text?: true;
}

const identifier = /^[A-Za-z_][\w.-]*$/;
const truth = /^(?:true|false)$/;
const cardinality = /^(?:single|multiple|ordered|record)$/;
const baseType = /^(?:identifier|boolean|integer|float|string|point|pair|directedPair|duration|file|uri)$/;
const none = /^$/;

const item: Readonly<Record<string, Model>> = {
  'qti-assessment-item': {
    children:
      /^(?:qti-response-declaration )+(?:qti-outcome-declaration )*(?:qti-item-body )(?:qti-response-processing )?(?:qti-modal-feedback )*$/,
    required: ['xmlns', 'identifier', 'title', 'time-dependent'],
    optional: ['adaptive', 'xml:lang', 'label'],
    words: { identifier, 'time-dependent': truth, adaptive: truth },
  },
  'qti-response-declaration': {
    children: /^(?:qti-correct-response )?$/,
    required: ['identifier', 'cardinality', 'base-type'],
    words: { identifier, cardinality, 'base-type': baseType },
  },
  'qti-correct-response': { children: /^(?:qti-value )+$/ },
  'qti-value': { children: none, text: true },
  'qti-outcome-declaration': {
    children: none,
    required: ['identifier', 'cardinality', 'base-type'],
    words: { identifier, cardinality, 'base-type': baseType },
  },
  'qti-item-body': { children: /^(?:qti-choice-interaction )+$/ },
  'qti-choice-interaction': {
    children: /^(?:qti-prompt )?(?:qti-simple-choice )+$/,
    required: ['response-identifier', 'max-choices'],
    optional: ['shuffle', 'min-choices'],
    words: { 'response-identifier': identifier, shuffle: truth, 'max-choices': /^\d+$/ },
  },
  'qti-prompt': { children: none, text: true },
  'qti-simple-choice': {
    children: none,
    text: true,
    required: ['identifier'],
    optional: ['fixed'],
    words: { identifier, fixed: truth },
  },
  'qti-response-processing': { children: /^(?:qti-response-condition |qti-set-outcome-value )*$/ },
  'qti-response-condition': { children: /^qti-response-if (?:qti-response-else-if )*(?:qti-response-else )?$/ },
  'qti-response-if': { children: /^qti-match (?:qti-set-outcome-value )*$/ },
  'qti-response-else': { children: /^(?:qti-set-outcome-value )*$/ },
  'qti-match': { children: /^qti-variable qti-correct $/ },
  'qti-variable': { children: none, required: ['identifier'], words: { identifier } },
  'qti-correct': { children: none, required: ['identifier'], words: { identifier } },
  'qti-set-outcome-value': { children: /^qti-base-value $/, required: ['identifier'], words: { identifier } },
  'qti-base-value': { children: none, text: true, required: ['base-type'], words: { 'base-type': baseType } },
  'qti-modal-feedback': {
    children: /^qti-content-body $/,
    required: ['outcome-identifier', 'identifier', 'show-hide'],
    words: { identifier, 'show-hide': /^(?:show|hide)$/ },
  },
  'qti-content-body': { children: /^(?:p )*$/ },
  p: { children: none, text: true },
};

const test: Readonly<Record<string, Model>> = {
  'qti-assessment-test': {
    children: /^(?:qti-test-part )+$/,
    required: ['xmlns', 'identifier', 'title'],
    words: { identifier },
  },
  'qti-test-part': {
    children: /^(?:qti-assessment-section )+$/,
    required: ['identifier', 'navigation-mode', 'submission-mode'],
    words: {
      identifier,
      'navigation-mode': /^(?:linear|nonlinear)$/,
      'submission-mode': /^(?:individual|simultaneous)$/,
    },
  },
  'qti-assessment-section': {
    children: /^(?:qti-assessment-item-ref )*$/,
    required: ['identifier', 'title', 'visible'],
    words: { identifier, visible: truth },
  },
  'qti-assessment-item-ref': { children: none, required: ['identifier', 'href'], words: { identifier } },
};

const manifest: Readonly<Record<string, Model>> = {
  manifest: {
    children: /^metadata organizations resources $/,
    required: ['xmlns', 'identifier'],
    words: { identifier },
  },
  metadata: { children: /^schema schemaversion $/ },
  schema: { children: none, text: true },
  schemaversion: { children: none, text: true },
  organizations: { children: none },
  resources: { children: /^(?:resource )*$/ },
  resource: {
    children: /^(?:file )+(?:dependency )*$/,
    required: ['identifier', 'type', 'href'],
    words: { identifier, type: /^imsqti_(?:item|test)_xmlv3p0$/ },
  },
  file: { children: none, required: ['href'] },
  dependency: { children: none, required: ['identifierref'], words: { identifierref: identifier } },
};

const roots: Readonly<Record<string, { readonly models: Readonly<Record<string, Model>>; readonly space: string }>> = {
  'qti-assessment-item': { models: item, space: 'http://www.imsglobal.org/xsd/imsqtiasi_v3p0' },
  'qti-assessment-test': { models: test, space: 'http://www.imsglobal.org/xsd/imsqtiasi_v3p0' },
  manifest: { models: manifest, space: 'http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1' },
};

/** Where a file departs from the structure. */
export function structureFaults(text: string): readonly string[] {
  const elements = readXml(text);
  const [root] = elements;
  const kind = roots[root?.name ?? ''];
  if (root === undefined || kind === undefined) return [`no root: ${root?.name}`];
  const space = root.attributes.xmlns === kind.space ? [] : [`namespace ${root.attributes.xmlns}`];
  return [...space, ...elements.flatMap((element) => elementFaults(element, kind.models))];
}

function elementFaults({ name, attributes, children, words }: XmlElement, models: Readonly<Record<string, Model>>) {
  const model = models[name];
  if (model === undefined) return [`<${name}> has no place here`];
  const { required = [], optional = [] } = model;
  const faults: string[] = [];
  const inside = children.map((child) => `${child.name} `).join('');
  if (!model.children.test(inside)) faults.push(`<${name}> holds ${inside}`);
  if (model.text === undefined && words.trim() !== '') faults.push(`<${name}> holds words`);
  for (const one of required) if (!(one in attributes)) faults.push(`<${name}> lacks ${one}`);
  for (const [one, value] of Object.entries(attributes)) {
    if (!required.includes(one) && !optional.includes(one)) faults.push(`<${name}> may not have ${one}`);
    if (model.words?.[one]?.test(value) === false) faults.push(`${one}="${value}" of <${name}>`);
  }
  return faults;
}
