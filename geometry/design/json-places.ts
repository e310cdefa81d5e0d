/**
 * Where the parts of a JSON text stand, so that a person finds in a file what is wrong with it. Only asked when something
 * is: a small reader of its own (RFC 8259), since the engine's keeps no places and words its errors in ways of its own.
 */

/** Deeper than any document of ours, and less than what makes a program that follows it run out of room. */
export const DEEPEST_JSON = 60;

type Members = Map<string, Place>;

/** A value of the text. */
interface Place {
  /** Offset of its first character; of its name where it has one. */
  readonly at: number;
  readonly items?: readonly Place[];
  readonly members?: Members;
}

export interface JsonFault {
  /** From 1. */
  readonly line: number;
  readonly kind: 'broken' | 'deep' | 'twice' | 'forbidden';
  /** The part's name, for `twice` and `forbidden`. */
  readonly name?: string;
}

/**
 * The first thing by which a text is no JSON or none that could be meant: nested too deeply, a part that stands twice in
 * its group (the engine would silently take the last), or one named __proto__. undefined for a sound text.
 */
export function jsonFault(text: string): JsonFault | undefined {
  const read = readPlaces(text);
  return 'fault' in read ? { ...read.fault, line: lineAt(text, read.at) } : undefined;
}

/**
 * The line (from 1) where the part at a path begins; for a part that is missing, where the group or list begins that it
 * should stand in. undefined where the text is no JSON.
 */
export function lineOfPart(text: string, path: readonly PropertyKey[]): number | undefined {
  const read = readPlaces(text);
  if ('fault' in read) return undefined;
  let place = read;
  for (const key of path) {
    const next = typeof key === 'number' ? place.items?.[key] : place.members?.get(String(key));
    if (!next) break;
    place = next;
  }
  return lineAt(text, place.at);
}

function lineAt(text: string, offset: number): number {
  let line = 1;
  for (let i = text.indexOf('\n'); i >= 0 && i < offset; i = text.indexOf('\n', i + 1)) line++;
  return line;
}

interface Stop {
  readonly at: number;
  readonly fault: Omit<JsonFault, 'line'>;
}

const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
const ESCAPE = /\\(?:["\\/bfnrt]|u[\dA-Fa-f]{4})/y;
const WORD = /true|false|null/y;
const SPACES = /[ \t\n\r]*/y;

function readPlaces(text: string): Place | Stop {
  let at = 0;
  const match = (pattern: RegExp): string | undefined => {
    pattern.lastIndex = at;
    const found = pattern.exec(text)?.[0];
    if (found !== undefined) at += found.length;
    return found;
  };
  /** By hand: a pattern would go back and forth over a very long one. */
  const string = (): string | undefined => {
    const start = at;
    if (text[at] !== '"') return undefined;
    at++;
    while (at < text.length && text[at] !== '"') {
      if (text[at] === '\\') {
        if (match(ESCAPE) === undefined) return undefined;
      } else if (text[at]! < ' ') return undefined;
      else at++;
    }
    at++;
    return at > text.length ? undefined : text.slice(start, at);
  };
  const stop = (kind: JsonFault['kind'], where = at, name?: string): Stop => ({
    at: where,
    fault: name === undefined ? { kind } : { kind, name },
  });

  const value = (depth: number, from: number): Place | Stop => {
    if (depth > DEEPEST_JSON) return stop('deep');
    if (text[at] === '{') return group(depth, from);
    if (text[at] === '[') return list(depth, from);
    return (string() ?? match(NUMBER) ?? match(WORD)) === undefined ? stop('broken') : { at: from };
  };

  const list = (depth: number, from: number): Place | Stop => {
    const items: Place[] = [];
    const end = each(']', () => {
      const item = value(depth + 1, at);
      if ('fault' in item) return item;
      items.push(item);
      return undefined;
    });
    return end ?? { at: from, items };
  };

  const group = (depth: number, from: number): Place | Stop => {
    const members: Members = new Map();
    const end = each('}', () => {
      const start = at;
      const quoted = string();
      if (quoted === undefined) return stop('broken');
      const name = JSON.parse(quoted) as string;
      if (name === '__proto__') return stop('forbidden', start, name);
      if (members.has(name)) return stop('twice', start, name);
      match(SPACES);
      if (text[at] !== ':') return stop('broken');
      at++;
      match(SPACES);
      const member = value(depth + 1, start);
      if ('fault' in member) return member;
      members.set(name, member);
      return undefined;
    });
    return end ?? { at: from, members };
  };

  /** What stands between two brackets, parted by commas; the reader stands on the first bracket. */
  const each = (last: string, one: () => Stop | undefined): Stop | undefined => {
    at++;
    match(SPACES);
    if (text[at] === last) {
      at++;
      return undefined;
    }
    for (;;) {
      match(SPACES);
      const stopped = one();
      if (stopped) return stopped;
      match(SPACES);
      const sign = text[at];
      if (sign !== ',' && sign !== last) return stop('broken');
      at++;
      if (sign === last) return undefined;
    }
  };

  match(SPACES);
  const whole = value(1, at);
  if ('fault' in whole) return whole;
  match(SPACES);
  return at < text.length ? stop('broken') : whole;
}
