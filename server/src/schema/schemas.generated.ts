// Generated from schemas/ by `npm run generate`. Do not edit.
import chemistry from '../../../schemas/chemistry.schema.json' with { type: 'json' };
import device from '../../../schemas/device.schema.json' with { type: 'json' };
import document from '../../../schemas/document.schema.json' with { type: 'json' };
import library from '../../../schemas/library.schema.json' with { type: 'json' };
import monitor from '../../../schemas/monitor.schema.json' with { type: 'json' };
import packaging from '../../../schemas/packaging.schema.json' with { type: 'json' };
import poster from '../../../schemas/poster.schema.json' with { type: 'json' };
import procedure from '../../../schemas/procedure.schema.json' with { type: 'json' };
import question from '../../../schemas/question.schema.json' with { type: 'json' };
import quiz from '../../../schemas/quiz.schema.json' with { type: 'json' };
import response from '../../../schemas/response.schema.json' with { type: 'json' };
import set from '../../../schemas/set.schema.json' with { type: 'json' };
import signOff from '../../../schemas/sign-off.schema.json' with { type: 'json' };
import site from '../../../schemas/site.schema.json' with { type: 'json' };
import sterilizer from '../../../schemas/sterilizer.schema.json' with { type: 'json' };
import training from '../../../schemas/training.schema.json' with { type: 'json' };
import ultrasonic from '../../../schemas/ultrasonic.schema.json' with { type: 'json' };
import values from '../../../schemas/values.schema.json' with { type: 'json' };
import waiver from '../../../schemas/waiver.schema.json' with { type: 'json' };
import washer from '../../../schemas/washer.schema.json' with { type: 'json' };
import water from '../../../schemas/water.schema.json' with { type: 'json' };
import type { SchemaPart, SchemaSource } from './shape.ts';

/** By name without `.schema.json`. Bundles hold the same as text and parse each at first use. */
export const schemas: SchemaSource = new Map<string, SchemaPart>([
  ['chemistry', chemistry as SchemaPart],
  ['device', device as SchemaPart],
  ['document', document as SchemaPart],
  ['library', library as SchemaPart],
  ['monitor', monitor as SchemaPart],
  ['packaging', packaging as SchemaPart],
  ['poster', poster as SchemaPart],
  ['procedure', procedure as SchemaPart],
  ['question', question as SchemaPart],
  ['quiz', quiz as SchemaPart],
  ['response', response as SchemaPart],
  ['set', set as SchemaPart],
  ['sign-off', signOff as SchemaPart],
  ['site', site as SchemaPart],
  ['sterilizer', sterilizer as SchemaPart],
  ['training', training as SchemaPart],
  ['ultrasonic', ultrasonic as SchemaPart],
  ['values', values as SchemaPart],
  ['waiver', waiver as SchemaPart],
  ['washer', washer as SchemaPart],
  ['water', water as SchemaPart],
]);
