import { useEffect, useMemo } from 'react';
import { useStore } from 'zustand';
import type { PlateResult } from '../../../geometry/plate/plate.ts';
import type { DragStore } from './carry/drag-store.ts';
import { openingsOf, pathsOf } from './plate-paths.ts';

/**
 * The plate in sight. While something is dragged the plate that the hand took hold of stays, less what moves, until a
 * newer one came.
 */
export function useShownPlate(newest: PlateResult | undefined, busy: boolean, drags: DragStore) {
  const ids = useStore(drags, (s) => s.drag?.ids);
  const dragged = useStore(drags, (s) => s.drag?.plate);
  const droppedOn = useStore(drags, (s) => s.drag?.droppedOn);
  const settled = droppedOn !== undefined && (newest !== droppedOn || !busy);
  const plate = settled ? newest : (dragged ?? newest);
  const paths = useMemo(() => (plate ? pathsOf(plate) : undefined), [plate]);
  const lifted = useMemo(
    () => (dragged && ids ? { of: pathsOf(dragged).scene, openings: openingsOf(dragged, ids) } : undefined),
    [dragged, ids],
  );
  return { plate, paths, lifted, settled, dragging: ids !== undefined };
}

/** Ends the drag as soon as the true picture is painted. */
export function useDragEnd(shownTrue: boolean, drags: DragStore): void {
  useEffect(() => {
    if (shownTrue) drags.setState({ drag: undefined });
  }, [shownTrue, drags]);
}
