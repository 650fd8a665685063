import { focusOf } from '../check/finding.ts';
import type { Place } from '../model/node.ts';
import { pathOf, rootOf } from '../model/node.ts';
import { jsonText } from './json.ts';
import type { Placer } from './model.ts';
import { routeCautions } from './route-cautions.ts';

/** What a JSON answer about routes is about. Fields are only ever added within a version. */
export type RouteJsonFormat = 'traywright-route' | 'traywright-routes' | 'traywright-what-if' | 'traywright-questions';

/**
 * Any answer about routes as JSON, version 1: the plain data of route/model.ts, each place as file, field, line and column from 1. The
 * same library gives the same bytes.
 */
export function routeJson(format: RouteJsonFormat, content: Readonly<Record<string, unknown>>, placer: Placer): string {
  const plain = plainOf(content, placer) as Record<string, unknown>;
  return `${jsonText({ format, version: 1, ...plain, cautions: routeCautions })}\n`;
}

function plainOf(value: unknown, placer: Placer): unknown {
  if (Array.isArray(value)) return value.map((item) => plainOf(item, placer));
  if (typeof value !== 'object' || value === null)
    return typeof value === 'number' && !Number.isFinite(value) ? null : value;
  if (isPlace(value)) return plainPlace(value, placer);
  return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, plainOf(part, placer)]));
}

function isPlace(value: object): value is Place {
  return 'span' in value && 'key' in value && ('parent' in value || 'root' in value);
}

function plainPlace(place: Place, placer: Placer): unknown {
  const { file } = rootOf(place);
  const { start } = placer.place(file, focusOf(place));
  return { file, field: pathOf(place), line: start.line + 1, column: start.character + 1 };
}
