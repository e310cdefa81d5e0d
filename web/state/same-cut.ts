import type { Design } from '../../geometry/design/schema.ts';

/** What a plate is made of; all else (title, order, approval, options, revisions) is paper. */
const CUT_PARTS = ['head', 'surface', 'lifting', 'plates', 'stock', 'elements', 'bridges', 'ownFaces'] as const;

/** True when two designs share, as the very same data, all that plates are made of: nothing to work out anew. */
export function sameCut(a: Design, b: Design): boolean {
  return CUT_PARTS.every((part) => a[part] === b[part]);
}
