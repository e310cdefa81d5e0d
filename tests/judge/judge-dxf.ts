import { polylinePoints, readDxf } from '../readers/dxf-reader.ts';
import { difference, partAreas, polygon, shrink, unionOf } from './jts.ts';

/** A written cut file judged with other people's code only: dxf-parser reads it, JTS does the geometry. */
export interface Judgement {
  /** Connected pieces of metal, as cut. More than one: something falls out. */
  readonly pieces: number;
  /** The same after shrinking by 0.98 of half the least bridge; rounding specks under 0.0004 mm2 left out. */
  readonly shrunkPieces: number;
  readonly rimDiameterMm: number;
  readonly contours: number;
  readonly metalAreaMm2: number;
}

const SHRINK_SHARE = 0.98;
const SPECK_MM2 = 0.0004;
/** Arcs become chords this long: off the arc by less than 0.003 mm on any radius over 1 mm. */
const STEP_MM = 0.15;

export function judgeDxf(dxf: string, leastBridgeMm: number): Judgement {
  const { entities } = readDxf(dxf);
  const rim = entities.find((e) => e.type === 'CIRCLE');
  if (rim?.radius === undefined) throw new Error('the file has no rim');
  const outlines = entities.filter((e) => e.type !== 'CIRCLE').map((e) => polylinePoints(e, STEP_MM));
  const disc = polygon(circle(rim.radius));
  const metal = outlines.length > 0 ? difference(disc, unionOf(outlines.map((o) => polygon(o)))) : disc;
  const shrunk = shrink(metal, (SHRINK_SHARE * leastBridgeMm) / 2);
  return {
    pieces: partAreas(metal).length,
    shrunkPieces: partAreas(shrunk).filter((area) => area > SPECK_MM2).length,
    rimDiameterMm: 2 * rim.radius,
    contours: outlines.length,
    metalAreaMm2: metal.getArea(),
  };
}

function circle(radius: number): { x: number; y: number }[] {
  const n = Math.ceil(Math.PI / Math.acos(1 - 0.001 / radius));
  return Array.from({ length: n }, (_, i) => {
    const a = (2 * Math.PI * i) / n;
    return { x: radius * Math.cos(a), y: radius * Math.sin(a) };
  });
}
