import { lazy, Suspense, useEffect, useState, type ComponentProps } from 'react';
import type { PlateStage } from '../stage/PlateStage.tsx';
import { FirstPlate } from './FirstPlate.tsx';

const Stage = lazy(async () => ({ default: (await import('../stage/PlateStage.tsx')).PlateStage }));

/** A plate that does not come in this time must not keep the stage away. */
const LONGEST_WAIT_MS = 20_000;

/** Once it has been drawn, the plain picture is no longer needed in this visit. */
let drawnBefore = false;

/** The stage, which is large to load, comes once the plate is in sight. */
export function StageLater(props: ComponentProps<typeof PlateStage>) {
  const [drawn, setDrawn] = useState(drawnBefore);
  useEffect(() => {
    drawnBefore = drawn;
    if (drawn) return;
    const timer = setTimeout(() => setDrawn(true), LONGEST_WAIT_MS);
    return () => clearTimeout(timer);
  }, [drawn]);
  const picture = <FirstPlate plate={props.plate} waiting={props.words?.empty ?? ''} onDrawn={() => setDrawn(true)} />;
  return drawn ? (
    <Suspense fallback={picture}>
      <Stage {...props} />
    </Suspense>
  ) : (
    picture
  );
}
