import css from './DrawingPicture.module.css';

interface DrawingPictureProps {
  /** Path data 1 high about its middle, y up: numbers and M, L, Q, C, Z only. */
  readonly path: string;
  readonly width: number;
}

/** A drawing as it would be cut, filling its frame. */
export function DrawingPicture({ path, width }: DrawingPictureProps) {
  const side = Math.max(1, width) * 1.04;
  return (
    <svg viewBox={`${-side / 2} ${-side / 2} ${side} ${side}`} className={css.picture} aria-hidden focusable="false">
      <path d={path} transform="scale(1 -1)" fill="currentColor" fillRule="nonzero" />
    </svg>
  );
}
