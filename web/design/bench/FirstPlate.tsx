import { useEffect } from 'react';
import type { PlateResult } from '../../../geometry/plate/plate.ts';
import { PlatePicture } from '../../ui/PlatePicture.tsx';
import css from './FirstPlate.module.css';

interface FirstPlateProps {
  readonly plate: PlateResult | undefined;
  /** What stands there until there is a plate. */
  readonly waiting: string;
  readonly onDrawn: () => void;
}

/** The plate as a plain drawing, in sight before the stage it can be worked on has come. */
export function FirstPlate({ plate, waiting, onDrawn }: FirstPlateProps) {
  const drawn = plate !== undefined;
  useEffect(() => {
    if (!drawn) return;
    // the second frame comes when the first has been painted
    let frame = requestAnimationFrame(() => {
      frame = requestAnimationFrame(() => {
        onDrawn();
      });
    });
    return () => cancelAnimationFrame(frame);
  }, [drawn, onDrawn]);
  return (
    <div id="stage" className={css.place} data-busy tabIndex={-1}>
      {drawn ? <PlatePicture plate={plate} /> : <p>{waiting}</p>}
    </div>
  );
}
