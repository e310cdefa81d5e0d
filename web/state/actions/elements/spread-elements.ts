import type { Design, DesignElement } from '../../../../geometry/design/schema.ts';
import type { Extent } from '../../../../geometry/layout/placed.ts';
import type { Change } from '../../change.ts';
import { angleOf, atAngle } from './align-elements.ts';
import { isFree, shiftElement } from './move-element.ts';
import { placeElements } from './place-elements.ts';
import { boxOf, spanOf } from './reach.ts';

export type SpreadOver = 'round' | 'height';

/**
 * Spreads elements evenly: round the ring with as many degrees free between each two, beginning with the first chosen
 * (two or more); or down the head with as much metal between each two, the highest and the lowest staying (three or
 * more). extents: of the plate looked at, mm; radiusMm: its radius. Locked ones do not move.
 */
export function spreadElements(
  design: Design,
  ids: readonly string[],
  over: SpreadOver,
  extents: readonly Extent[],
  radiusMm: number,
): Change {
  const chosen = ids.flatMap((id) => design.elements.filter((e) => e.id === id));
  const moved = over === 'round' ? round(chosen, extents) : downTheHead(chosen, extents, radiusMm);
  return { ...placeElements(design, moved), undo: 'step' };
}

function round(chosen: readonly DesignElement[], extents: readonly Extent[]): DesignElement[] {
  const first = chosen.find((e) => angleOf(e) !== undefined);
  if (first === undefined) return [];
  const start = angleOf(first) ?? 0;
  const past = (deg: number) => (((deg - start) % 360) + 360) % 360;
  const placed = chosen
    .flatMap((element) => {
      const deg = angleOf(element);
      return deg === undefined ? [] : [{ element, past: past(deg), span: spanOf(element.id, extents) }];
    })
    .sort((a, b) => a.past - b.past);
  const room = 360 - placed.reduce((sum, p) => sum + p.span, 0);
  // Where they take more than the whole ring, at least their middles are even.
  const spans = room > 0 ? placed.map((p) => p.span) : placed.map(() => 0);
  const gap = (room > 0 ? room : 360) / placed.length;
  let at = start - (spans[0] ?? 0) / 2;
  return placed.map(({ element }, i) => {
    const half = (spans[i] ?? 0) / 2;
    const to = atAngle(element, at + half);
    at += 2 * half + gap;
    return i === 0 ? element : to;
  });
}

function downTheHead(chosen: readonly DesignElement[], extents: readonly Extent[], radiusMm: number): DesignElement[] {
  const placed = chosen
    .flatMap((element) => {
      const box = isFree(element) ? boxOf(element.id, extents) : undefined;
      return box === undefined ? [] : [{ element, box }];
    })
    .sort((a, b) => b.box.maxY + b.box.minY - a.box.maxY - a.box.minY);
  const [top, bottom] = [placed[0], placed.at(-1)];
  if (top === undefined || bottom === undefined || placed.length < 3) return [];
  const inner = placed.slice(1, -1);
  const taken = inner.reduce((sum, { box }) => sum + box.maxY - box.minY, 0);
  const gap = (top.box.minY - bottom.box.maxY - taken) / (placed.length - 1);
  let edge = top.box.minY;
  return inner.map(({ element, box }) => {
    edge -= gap;
    const by = edge - box.maxY;
    edge -= box.maxY - box.minY;
    return shiftElement(element, 0, by / radiusMm);
  });
}
