import type { core } from 'zod/mini';
import { DOCUMENT_EN } from '../sentences/document-en.ts';
import type { KeyOf } from '../sentences/make-say.ts';
import { beginningOf, shorten } from '../sentences/shorten.ts';
import type { Refused, Wording } from '../sentences/wording.ts';
import { visible } from './visible.ts';

type Issue = core.$ZodIssue;
type Path = readonly PropertyKey[];

/** Members of lists, by the list they stand in. */
const MEMBERS = { plates: 'document.plate', elements: 'document.element', ownFaces: 'document.ownFace' } as const;

/** What is wrong with a document by validation: where, what, and what would be right, in one plain sentence. */
export function problemFor(issue: Issue, raw: unknown): Refused {
  const { path, complaint } = faultOf(issue, raw);
  const where = wordsForPath(path, raw);
  return where === undefined
    ? DOCUMENT_EN.refused('document.wrong', { complaint })
    : DOCUMENT_EN.refused('document.wrongAt', { where, complaint });
}

/** Where in any document of ours a part fails its schema, and what is wrong with it: `is missing`. */
export function faultOf(issue: Issue, raw: unknown): { readonly path: Path; readonly complaint: Wording } {
  const [deepest, path] = deepestIssue(issue, issue.path);
  return { path, complaint: complaintOf(deepest, valueAt(raw, path)) };
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

function complaintOf(issue: Issue, value: unknown): Wording {
  switch (issue.code) {
    case 'unrecognized_keys': {
      const names = issue.keys.slice(0, 3).map((k) => `"${visible(k)}"`);
      return DOCUMENT_EN.say(issue.keys.length > 1 ? 'document.strangeParts' : 'document.strangePart', {
        names: names.join(', '),
      });
    }
    case 'invalid_type':
      return DOCUMENT_EN.say(value === undefined ? 'document.missing' : wanted(issue.expected));
    case 'too_small': {
      const least = Number(issue.minimum);
      if (issue.origin === 'string')
        return least === 1 ? DOCUMENT_EN.say('document.empty') : DOCUMENT_EN.say('document.shorter', { least });
      if (issue.origin === 'array') return DOCUMENT_EN.say('document.fewest', { least });
      return DOCUMENT_EN.say('document.below', { value: quote(value), least });
    }
    case 'too_big': {
      const most = Number(issue.maximum);
      if (issue.origin === 'string') {
        return typeof value === 'string'
          ? DOCUMENT_EN.say('document.tooLongBy', { length: value.length, most })
          : DOCUMENT_EN.say('document.tooLong', { most });
      }
      if (issue.origin === 'array') return DOCUMENT_EN.say('document.most', { most });
      return DOCUMENT_EN.say('document.above', { value: quote(value), most });
    }
    case 'invalid_value': {
      const known = issue.values.map((v) => `"${String(v)}"`);
      const [first = '', ...others] = known;
      const either = others.reduce<string | Wording>(
        (one, other) => DOCUMENT_EN.say('document.or', { one, other }),
        first,
      );
      return DOCUMENT_EN.say('document.oneOf', { value: quote(value), known: either });
    }
    default:
      return value === undefined
        ? DOCUMENT_EN.say('document.missing')
        : DOCUMENT_EN.say('document.formUnknown', { value: quote(value) });
  }
}

/** The innermost part first, each as part of the next; undefined for the document itself. */
function wordsForPath(path: Path, raw: unknown): Wording | undefined {
  let words: Wording | undefined;
  const within = (part: Wording): Wording =>
    words === undefined ? part : DOCUMENT_EN.say('document.partOf', { part, whole: words });
  for (let i = 0; i < path.length; i++) {
    const key = path[i];
    const next = path[i + 1];
    if (typeof key === 'string' && Object.hasOwn(MEMBERS, key) && typeof next === 'number') {
      const member = DOCUMENT_EN.say(MEMBERS[key as keyof typeof MEMBERS], { number: next + 1 });
      words = within(identified(member, valueAt(raw, path.slice(0, i + 2))));
      i++;
    } else if (typeof key === 'string' && key !== 'source') {
      words = within(namePart(key));
    } else if (typeof key === 'number') {
      words = within(DOCUMENT_EN.say('document.member', { number: key + 1 }));
    }
  }
  return words;
}

/** `element 1 ("id")`, so that a person finds it in a file. */
function identified(what: Wording, member: unknown): Wording {
  if (typeof member !== 'object' || member === null) return what;
  const id = (member as Record<string, unknown>)['id'];
  return typeof id === 'string' && id !== '' && id.length <= 60
    ? DOCUMENT_EN.say('document.identified', { what, id: visible(id) })
    : what;
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
  return shorten(visible(beginningOf(JSON.stringify(value) ?? 'missing', 60)), 40, '...');
}

function wanted(expected: string): KeyOf<typeof DOCUMENT_EN> {
  if (expected === 'string') return 'document.wantsText';
  if (expected === 'number') return 'document.wantsNumber';
  if (expected === 'int') return 'document.wantsWhole';
  if (expected === 'array') return 'document.wantsList';
  return 'document.wantsGroup';
}

/** What a person would call a part of a design. */
function namePart(key: string): Wording {
  return Object.hasOwn(DOCUMENT_EN.table.parts, key)
    ? DOCUMENT_EN.say(`parts.${key as keyof typeof DOCUMENT_EN.table.parts}`)
    : DOCUMENT_EN.say('document.otherPart', { name: visible(key) });
}
