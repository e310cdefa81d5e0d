import { DOCUMENT_EN } from '../../sentences/document-en.ts';
import type { Refused } from '../../sentences/wording.ts';

/** One step from a version of the design document to the next; each step is a file of its own in versions/. */
export interface VersionStep {
  /** The version this step starts from; it ends at the next. */
  readonly from: number;
  readonly step: (old: Record<string, unknown>) => Record<string, unknown>;
}

/**
 * Brings a document of an older version up to the current one, a step at a time.
 * Takes the raw document, whose `version` is at most `current`; gives the raw document of the current version,
 * not yet validated, or a sentence when no step leads on. The given document is not changed.
 */
export function bringUpToDate(
  raw: Record<string, unknown>,
  current: number,
  steps: readonly VersionStep[],
): { upToDate: Record<string, unknown> } | Refused {
  let doc = raw;
  let version = raw['version'] as number;
  while (version < current) {
    const next = steps.find((s) => s.from === version);
    if (!next) return DOCUMENT_EN.refused('document.unversioned', { version });
    version += 1;
    doc = { ...next.step(doc), version };
  }
  return { upToDate: doc };
}
