import type { BarrelPicture } from '../../geometry/proof/barrel-picture.ts';

interface BarrelDrawingProps {
  readonly picture: BarrelPicture;
  readonly className: string | undefined;
  /** What the picture shows, in words. */
  readonly label: string;
}

/** The end of a barrel straight on, as large as its place. */
export function BarrelDrawing({ picture: { paths, reachMm }, className, label }: BarrelDrawingProps) {
  return (
    <svg
      viewBox={`${-reachMm} ${-reachMm} ${2 * reachMm} ${2 * reachMm}`}
      className={className}
      role="img"
      aria-label={label}
    >
      {paths.map(({ d, fill = 'none', stroke, width, opacity }, i) => (
        <path key={i} d={d} fillRule="evenodd" fill={fill} stroke={stroke} strokeWidth={width} opacity={opacity} />
      ))}
    </svg>
  );
}
