import type { core } from 'zod/mini';
import { visible } from './visible.ts';

type Issue = core.$ZodIssue;
type Path = readonly PropertyKey[];

/** What a person would call the parts of a design; a part without a plain name is quoted. */
const NAMES: Record<string, string> = {
  title: 'the title',
  head: 'the barrel head',
  alongMm: 'the diameter along the grain',
  acrossMm: 'the diameter across the grain',
  barrel: 'the barrel',
  clearanceMm: 'the clearance',
  crownMm: 'the crown',
  surface: 'the surface',
  plates: 'the list of plates',
  diameter: 'the diameter',
  mm: 'the size in mm',
  share: 'the share',
  quantity: 'the quantity',
  name: 'the name',
  id: 'the id',
  stock: 'the stock',
  material: 'the material',
  thicknessMm: 'the thickness',
  process: 'the process',
  use: 'the use (paint or torch)',
  elements: 'the list of elements',
  kind: 'the kind',
  text: 'the text',
  face: 'the face',
  inner: 'the inner radius',
  outer: 'the outer radius',
  middleDeg: 'the middle angle',
  reads: 'the reading direction',
  tracking: 'the spacing',
  fit: 'the fit',
  spanDeg: 'the span in degrees',
  capHeight: 'the letter height',
  turnDeg: 'the turn',
  width: 'the width',
  style: 'the style',
  count: 'the count',
  bridges: 'the bridges',
  manner: 'the manner',
  ownFaces: 'the list of your own fonts',
  data: 'the font data',
  order: 'the order',
  who: 'the customer',
  reference: 'the reference',
  neededBy: 'the date needed by',
  notes: 'the notes',
  approval: 'the approval',
};

const MEMBERS: Record<string, string> = { plates: 'plate', elements: 'element', ownFaces: 'font' };

/** One plain sentence for a problem that validation found in a document: where, what, and what would be right. */
export function sentenceFor(issue: Issue, raw: unknown): string {
  const [deepest, path] = deepestIssue(issue, issue.path);
  const where = wordsForPath(path, raw);
  const start = where === '' ? 'This design' : `In this design, ${where}`;
  return `${start} ${complaint(deepest, valueAt(raw, path))}. Correct it, or ask for a fresh copy.`;
}

/** A choice between forms fails once for each form; the form that was meant is the one with the fewest faults inside. */
function deepestIssue(issue: Issue, path: Path): [Issue, Path] {
  if (issue.code !== 'invalid_union') return [issue, path];
  let best: [Issue, Path] = [issue, path];
  let fewest = Infinity;
  for (const branch of issue.errors) {
    const first = branch[0];
    const inside = first && (first.path.length > 0 || first.code === 'unrecognized_keys');
    if (!inside || branch.length >= fewest) continue;
    best = deepestIssue(first, [...path, ...first.path]);
    fewest = branch.length;
  }
  return best;
}

function complaint(issue: Issue, value: unknown): string {
  switch (issue.code) {
    case 'unrecognized_keys':
      return `holds ${issue.keys.length > 1 ? 'parts' : 'a part'} that no design of this version has: ${issue.keys
        .slice(0, 3)
        .map((k) => `"${visible(k)}"`)
        .join(', ')}`;
    case 'invalid_type':
      return value === undefined ? 'is missing' : `should be ${typeWord(issue.expected)}`;
    case 'too_small':
      if (issue.origin === 'string')
        return issue.minimum === 1 ? 'is empty' : `is shorter than ${issue.minimum} characters`;
      if (issue.origin === 'array') return `needs at least ${issue.minimum}`;
      return `is ${quote(value)}, below the least allowed, ${issue.minimum}`;
    case 'too_big':
      if (issue.origin === 'string') {
        const length = typeof value === 'string' ? ` (${value.length})` : '';
        return `is too long${length}: at most ${issue.maximum} characters`;
      }
      if (issue.origin === 'array') return `has too many: at most ${issue.maximum}`;
      return `is ${quote(value)}, above the most allowed, ${issue.maximum}`;
    case 'invalid_value':
      return `is ${quote(value)}; it can be ${issue.values.map((v) => `"${String(v)}"`).join(' or ')}`;
    case 'invalid_union':
      return value === undefined ? 'is missing' : `is ${quote(value)}, which is not a form it can have`;
    default:
      return `is ${quote(value)}, which is not a form it can have`;
  }
}

function wordsForPath(path: Path, raw: unknown): string {
  const words: string[] = [];
  for (let i = 0; i < path.length; i++) {
    const key = path[i];
    const next = path[i + 1];
    const member = typeof key === 'string' ? MEMBERS[key] : undefined;
    if (member && typeof next === 'number') {
      words.push(`${member} ${next + 1}${nameOf(valueAt(raw, path.slice(0, i + 2)))}`);
      i++;
    } else if (typeof key === 'string' && key !== 'source') {
      words.push((Object.hasOwn(NAMES, key) ? NAMES[key] : undefined) ?? `the part "${visible(key)}"`);
    } else if (typeof key === 'number') {
      words.push(`number ${key + 1}`);
    }
  }
  return words.reverse().join(' of ');
}

/** ` ("id")`, so that a person finds the element in a file. */
function nameOf(member: unknown): string {
  if (typeof member !== 'object' || member === null) return '';
  const id = (member as Record<string, unknown>)['id'];
  return typeof id === 'string' && id !== '' && id.length <= 60 ? ` ("${visible(id)}")` : '';
}

function valueAt(raw: unknown, path: Path): unknown {
  let value: unknown = raw;
  for (const key of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined;
    value = (value as Record<PropertyKey, unknown>)[key];
  }
  return value;
}

function quote(value: unknown): string {
  const text = visible(JSON.stringify(value)?.slice(0, 60) ?? 'missing');
  return text.length > 40 ? `${text.slice(0, 37)}...` : text;
}

function typeWord(expected: string): string {
  if (expected === 'string') return 'a text';
  if (expected === 'number') return 'a number';
  if (expected === 'int') return 'a whole number';
  if (expected === 'array') return 'a list';
  return 'a group of parts';
}
