/**
 * host/: the disk and the clock, behind functions that give values: files of a library, today's date, careful writing.
 * The only importer of `node:fs` and `node:child_process`. It must not know rules, findings' meaning, editors or arguments, follows no
 * link out of a library, runs nothing from it and never reaches for the network.
 */
import { sep } from 'node:path';

export function isRuleFileName(name: string): boolean {
  return name.endsWith('.ifu.yaml');
}

/** Names that were probably meant as rule files but are not read: `x.ifu.yml`, `x.IFU.YAML`, `x.ifu.yaml.txt`. */
export function isNearRuleFileName(name: string): boolean {
  return !isRuleFileName(name) && /\.ifu\.ya?ml(\.txt)?$/i.test(name.slice(-16));
}

/** True for a `/`-separated relative path that can't lead out of its folder, whatever the system. */
export function staysInside(path: string): boolean {
  if (sep === '\\' && /[\\:]/.test(path)) return false;
  return !path.includes('\0') && !leadingAway.test(path);
}

/** A part of a path that is empty or stands for a folder of another name. */
const leadingAway = /(?:^|\/)\.{0,2}(?:\/|$)/;
