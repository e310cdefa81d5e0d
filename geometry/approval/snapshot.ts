import { canonicalJson } from '../design/canonical-json.ts';
import { DESIGN_PARTS, pickParts } from '../design/design-parts.ts';
import { isText } from '../design/kinds.ts';
import type { Design, Revision } from '../design/schema.ts';

export type Snapshot = Revision['design'];

/** All that decides what is cut and what it is called, without the fonts, which stay with the design. */
export function snapshotOf(design: Design): Snapshot {
  const { ownFaces: _, ...cut } = pickParts(design, DESIGN_PARTS, 'cut');
  return { title: design.title, ...cut } as Snapshot;
}

/** The design made to be as a snapshot says; fonts, order, approval and all else stay as they are. */
export function withSnapshot(design: Design, snapshot: Snapshot): Design {
  return { ...pickParts(design, DESIGN_PARTS, 'said', 'paper'), ownFaces: design.ownFaces, ...snapshot } as Design;
}

export function sameSnapshot(a: Snapshot, b: Snapshot): boolean {
  return canonicalJson(a) === canonicalJson(b);
}

/** Faces that a design needs: those of its texts, of its options and of its revisions. */
export function facesNeeded(design: Design): ReadonlySet<string> {
  const { elements, options = [], revisions = [] } = design;
  const texts = [...elements, ...revisions.flatMap((r) => r.design.elements)].filter(isText);
  return new Set([...texts.map((e) => e.face), ...options.flatMap((o) => Object.values(o.faces ?? {}))]);
}
