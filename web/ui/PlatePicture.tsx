import { useEffect } from 'react';
import type { PlateResult } from '../../geometry/plate/plate.ts';
import { regionsPath } from '../../geometry/proof/picture-path.ts';
import css from './PlatePicture.module.css';

/** A small plain drawing of a plate: metal, and what is cut away. */
export function PlatePicture({ plate }: { readonly plate: PlateResult }) {
  useEffect(tellFirstPicture, []);
  const radius = plate.diameterMm / 2;
  const path = regionsPath(plate.openings.map((o) => o.region));
  return (
    <svg
      viewBox={`${-radius} ${-radius} ${2 * radius} ${2 * radius}`}
      className={css.picture}
      aria-hidden
      focusable="false"
    >
      <circle r={radius} className={css.metal} />
      <path d={path} fillRule="evenodd" className={css.cut} />
    </svg>
  );
}

let told = false;

/** Marks when the first plate of a visit was in sight (the figures of the page count until then). */
function tellFirstPicture(): void {
  if (told) return;
  told = true;
  // the second frame comes when the first has been painted
  requestAnimationFrame(() => requestAnimationFrame(() => performance.mark('first-plate')));
}
