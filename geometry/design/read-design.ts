import { DOCUMENT_EN } from '../sentences/document-en.ts';
import type { KeyOf } from '../sentences/make-say.ts';
import type { Refused } from '../sentences/wording.ts';
import { workFault } from './work-fault.ts';
import { bringUpToDate } from './versions/bring-up-to-date.ts';
import { jsonFault } from './json-places.ts';
import { isCalledByData } from './own-face-id.ts';
import { problemFor } from './say-where.ts';
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
export function readDesign(text: string): { design: Design } | Refused {
  if (text.length > LONGEST_DESIGN_TEXT) return DOCUMENT_EN.refused('document.largeFile');
  const raw = text.startsWith('\uFEFF') ? text.slice(1) : text;
  if (raw.trim() === '') return DOCUMENT_EN.refused('document.emptyFile');

  const fault = jsonFault(raw);
  if (fault?.kind === 'deep') return DOCUMENT_EN.refused('document.tooDeep');
  if (fault?.kind === 'broken')
    return DOCUMENT_EN.refused(endsEarly(raw) ? 'document.cutShort' : 'document.unreadable');
  if (fault?.kind === 'forbidden') return DOCUMENT_EN.refused('document.hidden');
  if (fault) return DOCUMENT_EN.refused('document.twice', { line: fault.line, name: visible(fault.name ?? '') });
  const value: unknown = JSON.parse(raw);
  if (!isRecord(value) || value['format'] !== DESIGN_FORMAT) return DOCUMENT_EN.refused('document.notDesign');

  const version = value['version'];
  if (typeof version !== 'number' || !Number.isInteger(version)) return DOCUMENT_EN.refused('document.noVersion');
  if (version > DESIGN_VERSION) return DOCUMENT_EN.refused('document.newer', { version, newest: DESIGN_VERSION });
  const current = bringUpToDate(value, DESIGN_VERSION, VERSION_STEPS);
  if ('problem' in current) return current;

  const parsed = designSchema.safeParse(current.upToDate);
  if (!parsed.success) {
    const issue = parsed.error.issues[0];
    return issue ? problemFor(issue, current.upToDate) : DOCUMENT_EN.refused('document.incomplete');
  }
  const { elements, plates, ownFaces } = parsed.data;
  const twice =
    idTwice(elements, 'document.elementsTwice') ??
    idTwice(plates, 'document.platesTwice') ??
    idTwice(ownFaces, 'document.facesTwice');
  return twice ?? workFault(parsed.data) ?? faceMiscalled(ownFaces) ?? { design: parsed.data };
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

/** A font that is not called by its data: another that is called so could be cut in its place. */
function faceMiscalled(faces: Design['ownFaces']): Refused | undefined {
  const face = faces.find((f) => !isCalledByData(f));
  return face && DOCUMENT_EN.refused('document.faceMiscalled', { name: visible(face.name) });
}

function idTwice(members: readonly { readonly id: string }[], key: KeyOf<typeof DOCUMENT_EN>): Refused | undefined {
  const seen = new Set<string>();
  for (const { id } of members) {
    if (seen.has(id)) return DOCUMENT_EN.refused(key, { id: visible(id) });
    seen.add(id);
  }
  return undefined;
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
