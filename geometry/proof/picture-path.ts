import type { Region } from '../shapes.ts';

/** One shape of a picture: SVG path data with what it is painted by; millimetres, y down. */
export interface PicturePath {
  readonly d: string;
  readonly fill?: string;
  readonly stroke?: string;
  /** Of the stroke, mm. */
  readonly width?: number;
  /** 0 to 1; absent: 1. */
  readonly opacity?: number;
}

/** Hundredths: a picture needs no more. */
export function num(value: number): string {
  const text = value.toFixed(2).replace(/\.?0+$/, '');
  return text === '-0' ? '0' : text;
}

/** Regions as one path to be filled even-odd: y up as plates have it becomes y down. */
export function regionsPath(regions: readonly Region[]): string {
  return regions
    .flatMap((r) => [r.outer, ...r.holes])
    .map((ring) => `M${ring.map((p) => `${num(p.x)} ${num(-p.y)}`).join('L')}Z`)
    .join('');
}

export function disc(r: number): string {
  return `M${num(-r)} 0A${num(r)} ${num(r)} 0 1 1 ${num(r)} 0A${num(r)} ${num(r)} 0 1 1 ${num(-r)} 0Z`;
}

/** A ring: the inner circle runs the other way round, so that any rule of filling leaves it out. */
export function annulus(outer: number, inner: number): string {
  const i = num(inner);
  return `${disc(outer)}M${num(-inner)} 0A${i} ${i} 0 1 0 ${i} 0A${i} ${i} 0 1 0 ${num(-inner)} 0Z`;
}

/** What of a disc about the origin a like disc, moved by dx, dy, leaves bare. */
export function lune(r: number, dx: number, dy: number): string {
  const apart = Math.hypot(dx, dy);
  if (apart === 0 || apart >= 2 * r) return disc(r);
  const half = Math.sqrt(r * r - (apart * apart) / 4);
  const [ux, uy] = [dx / apart, dy / apart];
  const [a, b] = [1, -1].map((s) => `${num(dx / 2 - s * half * uy)} ${num(dy / 2 + s * half * ux)}`);
  const q = num(r);
  // Round the far side of the disc, and back along the moved one.
  return `M${a}A${q} ${q} 0 1 1 ${b}A${q} ${q} 0 0 0 ${a}Z`;
}
