import type { Point, Ring } from './shapes.ts';
import type { Wording } from './sentences/wording.ts';

/** stop: the plate must not be cut. look: worth a look. note: for your information. */
export type Severity = 'stop' | 'look' | 'note';

/** Where a finding is, as something the stage can light up; millimetres in the plate's frame. */
export type Place =
  | { readonly kind: 'plate' }
  | { readonly kind: 'point'; readonly at: Point; readonly radiusMm: number }
  | { readonly kind: 'ring'; readonly ring: Ring }
  | { readonly kind: 'band'; readonly innerMm: number; readonly outerMm: number };

/** A change of the design that one click applies. Each kind has one action in web/state/actions. */
export type Mend =
  | { readonly kind: 'scale-text'; readonly elementId: string; readonly share: number }
  | { readonly kind: 'move-band'; readonly elementId: string; readonly inner: number; readonly outer: number }
  | { readonly kind: 'set-tracking'; readonly elementId: string; readonly tracking: number }
  | { readonly kind: 'replace-text'; readonly elementId: string; readonly text: string }
  | { readonly kind: 'set-face'; readonly elementId: string; readonly face: string }
  | {
      readonly kind: 'set-stock';
      readonly material?: string;
      readonly process?: string;
      readonly thicknessMm?: number;
      readonly use?: 'paint' | 'torch';
    }
  | { readonly kind: 'forget-edits'; readonly editIds: readonly string[] }
  | {
      readonly kind: 'set-plate-diameter';
      readonly plateId: string;
      readonly diameter: 'fit' | { readonly mm: number };
    }
  | {
      readonly kind: 'set-lifting';
      readonly lifting: {
        readonly shape: 'holes';
        readonly count: number;
        readonly firstDeg: number;
        readonly at: number;
      };
    }
  | { readonly kind: 'add-mask-ring'; readonly plateId: string };

export interface Finding {
  /** Kebab-case code of ours, stable: tests, translations and files refer to it. */
  readonly code: string;
  readonly severity: Severity;
  readonly place: Place;
  readonly elementIds: readonly string[];
  readonly measuredMm?: number;
  readonly limitMm?: number;
  /** Plain English, for a customer; says what to do. */
  readonly sentence: string;
  /** The same for other languages; absent where only English is known. */
  readonly words?: Wording;
  readonly mend?: { readonly label: string; readonly words?: Wording; readonly change: Mend };
}

const RANK: Record<Severity, number> = { stop: 0, look: 1, note: 2 };

/** Worst first; otherwise the order in which they were found. */
export function sortFindings(findings: readonly Finding[]): Finding[] {
  return [...findings].sort((a, b) => RANK[a.severity] - RANK[b.severity]);
}

export type Verdict = 'ready' | 'look' | 'stop';

/** What all findings of a plate come to. Notes do not count. */
export function verdictOf(findings: readonly Finding[]): Verdict {
  if (findings.some((f) => f.severity === 'stop')) return 'stop';
  return findings.some((f) => f.severity === 'look') ? 'look' : 'ready';
}
