import { pickPlateParts } from '../../geometry/design/design-parts.ts';
import type { Design } from '../../geometry/design/schema.ts';

/** False when two designs share, as the very same data, all that plates and their findings are made of. */
export function havePlatesChanged(before: Design, now: Design): boolean {
  const [was, is] = [pickPlateParts(before), pickPlateParts(now)];
  return Object.keys({ ...was, ...is }).some((key) => was[key] !== is[key]);
}
