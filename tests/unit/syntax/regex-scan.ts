/** The pattern literals of a TypeScript source, found by a small scan that knows strings, comments and divisions. */
export function regexLiterals(source: string): string[] {
  const found: string[] = [];
  let before = '';
  for (let at = 0; at < source.length; at++) {
    const character = source[at] ?? '';
    if (character === '/' && source[at + 1] === '/') at = endOf(source, '\n', at) - 1;
    else if (character === '/' && source[at + 1] === '*') at = endOf(source, '*/', at + 2) + 1;
    else if (character === "'" || character === '"' || character === '`') {
      at = stringEnd(source, at);
      before = character;
    } else if (character === '/' && startsPattern(before, source, at)) {
      const end = patternEnd(source, at);
      found.push(source.slice(at, end));
      at = end - 1;
      before = '/';
    } else if (/\S/.test(character)) before = character;
  }
  return found;
}

function endOf(source: string, mark: string, from: number): number {
  const end = source.indexOf(mark, from);
  return end < 0 ? source.length : end;
}

function stringEnd(source: string, start: number): number {
  for (let at = start + 1; at < source.length; at++) {
    if (source[at] === '\\') at++;
    else if (source[at] === source[start]) return at;
  }
  return source.length;
}

/** After a value a slash divides; after a sign or a keyword it starts a pattern. */
function startsPattern(before: string, source: string, at: number): boolean {
  if (!/[\w)\]}'"`]/.test(before)) return true;
  return /\b(?:return|typeof|case|of|in)\s$/.test(source.slice(Math.max(0, at - 10), at));
}

function patternEnd(source: string, start: number): number {
  let inClass = false;
  for (let at = start + 1; at < source.length; at++) {
    const character = source[at];
    if (character === '\\') at++;
    else if (character === '[') inClass = true;
    else if (character === ']') inClass = false;
    else if (character === '/' && !inClass) {
      let end = at + 1;
      while (/[a-z]/.test(source[end] ?? '')) end++;
      return end;
    } else if (character === '\n') return at;
  }
  return source.length;
}

/** True when a group that holds an open-ended repetition is itself repeated without end. */
export function nestedQuantifiers(literal: string): boolean {
  const pattern = literal.slice(1, literal.lastIndexOf('/'));
  const repeats: boolean[] = [false];
  for (let at = 0; at < pattern.length; at++) {
    const character = pattern[at];
    let atomRepeats = false;
    if (character === '\\') at++;
    else if (character === '[') at = classEnd(pattern, at);
    else if (character === '(') {
      repeats.push(false);
      continue;
    } else if (character === ')') atomRepeats = repeats.pop() ?? false;
    else if (character === '|' || character === '?' || character === '*' || character === '+') continue;
    const endless = isEndless(pattern, at + 1);
    if (endless && atomRepeats) return true;
    if (endless || atomRepeats) repeats[repeats.length - 1] = true;
  }
  return false;
}

function classEnd(pattern: string, start: number): number {
  let at = start + 1;
  while (at < pattern.length && pattern[at] !== ']') at += pattern[at] === '\\' ? 2 : 1;
  return at;
}

function isEndless(pattern: string, at: number): boolean {
  return /^(?:[*+]|\{\d+,\})/.test(pattern.slice(at, at + 12));
}
