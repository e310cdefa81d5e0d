import { bringUpToDate } from './bring-up-to-date.ts';
import { sentenceFor } from './say-where.ts';
import { DESIGN_FORMAT, DESIGN_VERSION } from './limits.ts';
import { designSchema, type Design } from './schema.ts';
import { visible } from './visible.ts';
import { VERSION_STEPS } from './versions/steps.ts';

/** Longest text taken: room for two fonts of one's own; beyond it the browser would stand still on a phone. */
export const LONGEST_DESIGN_TEXT = 16_000_000;

/**
 * Reads a design document. Takes the whole text of a file; gives the design, brought up to the current version,
 * or one sentence that says what is wrong, where, and what to do. Nothing is repaired in silence.
 */
export function readDesign(text: string): { design: Design } | { problem: string } {
  if (text.length > LONGEST_DESIGN_TEXT) {
    return {
      problem: 'This file is larger than 16 MB. Take out fonts of your own that you do not need, then save it again.',
    };
  }
  const raw = text.startsWith('\uFEFF') ? text.slice(1) : text;
  if (raw.trim() === '') return { problem: 'This file is empty. Choose another copy of the design.' };

  let value: unknown;
  try {
    value = JSON.parse(raw);
  } catch {
    return {
      problem: endsEarly(raw)
        ? 'This file stops in the middle: part of it was lost on the way. Ask for it again, or use an earlier copy.'
        : 'This file cannot be read: it is not a design, or it was damaged. Choose a Bridgehead design (.json).',
    };
  }
  if (!isRecord(value) || value['format'] !== DESIGN_FORMAT) {
    return { problem: 'This is not a Bridgehead design. Choose a file that was saved from Bridgehead.' };
  }
  if (hidesPrototype(value)) {
    return {
      problem: 'This design holds a part named "__proto__", which no design has. It was tampered with; do not use it.',
    };
  }

  const version = value['version'];
  if (typeof version !== 'number' || !Number.isInteger(version)) {
    return {
      problem: 'This design does not say which version it is, so it cannot be read safely. Ask for a fresh copy.',
    };
  }
  if (version > DESIGN_VERSION) {
    return {
      problem: `This design is of version ${version}, and this Bridgehead reads up to version ${DESIGN_VERSION}. Open it with a newer Bridgehead.`,
    };
  }
  const current = bringUpToDate(value, DESIGN_VERSION, VERSION_STEPS);
  if ('problem' in current) return current;

  const parsed = designSchema.safeParse(current.upToDate);
  if (!parsed.success) {
    const issue = parsed.error.issues[0];
    return {
      problem: issue ? sentenceFor(issue, current.upToDate) : 'This design is not complete. Ask for a fresh copy.',
    };
  }
  const twice =
    firstTwice(
      parsed.data.elements.map((e) => e.id),
      'elements',
    ) ??
    firstTwice(
      parsed.data.plates.map((p) => p.id),
      'plates',
    ) ??
    firstTwice(
      parsed.data.ownFaces.map((f) => f.id),
      'fonts of your own',
    );
  return twice ?? { design: parsed.data };
}

/** True when strings or brackets are still open at the end of the text. */
function endsEarly(text: string): boolean {
  let depth = 0;
  let inString = false;
  for (let i = 0; i < text.length; i++) {
    const c = text[i];
    if (inString) {
      if (c === '\\') i++;
      else if (c === '"') inString = false;
    } else if (c === '"') inString = true;
    else if (c === '{' || c === '[') depth++;
    else if (c === '}' || c === ']') depth--;
  }
  return inString || depth > 0;
}

/** JSON can hold an own key of this name; merging such an object elsewhere would change every object's nature. */
function hidesPrototype(root: unknown): boolean {
  const stack: unknown[] = [root];
  while (stack.length > 0) {
    const value = stack.pop();
    if (typeof value !== 'object' || value === null) continue;
    if (Object.hasOwn(value, '__proto__')) return true;
    for (const part of Object.values(value) as unknown[]) stack.push(part);
  }
  return false;
}

function firstTwice(ids: readonly string[], what: string): { problem: string } | undefined {
  const seen = new Set<string>();
  for (const id of ids) {
    if (seen.has(id))
      return { problem: `Two ${what} of this design carry the same id, "${visible(id)}". Give one of them another.` };
    seen.add(id);
  }
  return undefined;
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
