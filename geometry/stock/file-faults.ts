/** Where in a file that a shop edits something is wrong, and in which line: for the stock file and the shop's own. */
import type { core } from 'zod/mini';
import { jsonFault, lineOfPart } from '../design/json-places.ts';
import { faultOf } from '../design/say-where.ts';
import { visible } from '../design/visible.ts';
import { STOCK_EN } from '../sentences/stock-en.ts';
import type { Refused, Wording } from '../sentences/wording.ts';

export type Path = readonly PropertyKey[];

/** What is wrong with a file, and the part it is about. */
export interface PlacedFault {
  readonly path: Path;
  readonly refused: Refused;
}

/** What a text holds; or the line that makes it no JSON, or none that could be meant. */
export function valueOfJson(text: string): { readonly value: unknown } | Refused {
  const fault = jsonFault(text);
  if (!fault) return { value: JSON.parse(text) as unknown };
  const { line, kind, name = '' } = fault;
  if (kind === 'twice') return STOCK_EN.refused('jsonFile.twice', { line, name: visible(name) });
  if (kind === 'forbidden') return STOCK_EN.refused('jsonFile.forbidden', { line, name });
  return STOCK_EN.refused(kind === 'deep' ? 'jsonFile.deep' : 'jsonFile.broken', { line });
}

/** The same fault with the line of its part in front. */
export function atLine(text: string, { path, refused }: PlacedFault): Refused {
  const line = lineOfPart(text, path);
  return line === undefined ? refused : STOCK_EN.refused('jsonFile.atLine', { line, problem: refused.words });
}

/** A value that its schema does not take: which, its place in words, and what is wrong with it. */
export function schemaFault(
  issue: core.$ZodIssue,
  raw: unknown,
): { readonly path: Path; readonly where: string; readonly complaint: Wording } {
  const { path, complaint } = faultOf(issue, raw);
  const where = whereInFile(path, raw);
  if (issue.code !== 'unrecognized_keys') return { path, where, complaint };
  return {
    path: [...path, issue.keys[0] ?? ''],
    where,
    complaint: STOCK_EN.say('jsonFile.strangeParts', { names: issue.keys.slice(0, 5).map(quoted).join(', ') }),
  };
}

/** The path as it stands in the file, since a person looks for it there: `processes[3] ("plasma") kerfMm value`. */
function whereInFile(path: Path, raw: unknown): string {
  let where = '';
  let value: unknown = raw;
  for (const key of path) {
    value = typeof value === 'object' && value !== null ? (value as Record<PropertyKey, unknown>)[key] : undefined;
    where += typeof key === 'number' ? `[${key + 1}]${idOf(value)}` : ` ${visible(String(key))}`;
  }
  return where.trim();
}

function idOf(member: unknown): string {
  const id = typeof member === 'object' && member !== null ? (member as Record<string, unknown>)['id'] : undefined;
  return typeof id === 'string' ? ` (${quoted(id)})` : '';
}

function quoted(id: string): string {
  return `"${visible(id)}"`;
}
