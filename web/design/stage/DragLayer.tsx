import { useMemo } from 'react';
import { Layer } from 'react-konva';
import { useStore } from 'zustand';
import type { DesignElement } from '../../../geometry/design/schema.ts';
import type { DragStore } from './carry/drag-store.ts';
import { ElementHandles } from './ElementHandles.tsx';
import { ghostParts, movedExtent } from './carry/ghost.ts';
import { Guides } from './Guides.tsx';
import { ElementOutline } from './Marks.tsx';
import { ghostPaths, movedPath, paintGhost } from './paint-ghost.ts';
import { PlateShape } from './canvas/PlateShape.tsx';
import type { Painted } from './scene.ts';

/** What is dragged follows the hand here, in a layer of its own: nothing else is drawn or worked out meanwhile. */
export function DragLayer(props: { readonly store: DragStore; readonly ground: Painted | undefined }) {
  const { store, ground } = props;
  const drag = useStore(store, (s) => s.drag);
  const plate = drag?.plate;
  const ids = drag?.ids;
  const paths = useMemo(() => (plate && ids ? ghostPaths(ghostParts(plate.openings, ids)) : []), [plate, ids]);
  if (!drag) return <Layer listening={false} />;

  const radiusMm = drag.plate.diameterMm / 2;
  const { before, now } = drag;
  const path = movedPath(paths, before, now.elements, radiusMm);
  const pairs = new Map(before.map((from, i) => [from.id, [from, now.elements[i] ?? from] as const]));
  const extents = drag.plate.layout.extents.flatMap((extent) => {
    const pair: readonly [DesignElement, DesignElement] | undefined = pairs.get(extent.elementId);
    return pair ? [movedExtent(extent, pair[0], pair[1], radiusMm)] : [];
  });
  const [first] = before.length === 1 ? extents : [];
  return (
    <Layer listening={false}>
      <PlateShape paint={(ctx, px) => paintGhost(ctx, path, ground, px)} />
      <Guides guides={now.guides} radiusMm={radiusMm} />
      <ElementOutline extents={extents} faint={false} />
      {first && <ElementHandles extent={first} locked={false} />}
    </Layer>
  );
}
