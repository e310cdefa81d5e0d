import { barrelById, BARRELS, type Barrel } from '../../../geometry/barrel/barrels.ts';
import { headDiameter } from '../../../geometry/barrel/blank.ts';
import { END_SHARE, LENGTH_SHARE, middle, staveMm } from '../../../geometry/barrel/proportions.ts';
import { headRecess } from '../../../geometry/barrel/recess.ts';
import { sideMeasures } from '../../../geometry/barrel/side-measures.ts';
import type { Design } from '../../../geometry/design/schema.ts';

/** What a barrel measures as it is drawn, mm. */
export interface BarrelMeasures {
  /** Visible head across the grain of its boards (sideways) and along it (upright). */
  readonly headAcrossMm: number;
  readonly headAlongMm: number;
  readonly recessMm: number;
  readonly staveMm: number;
  /** Outside, at the bilge and at the ends. */
  readonly bilgeMm: number;
  readonly endMm: number;
  readonly lengthMm: number;
}

/** A plate of at least this share of what the head takes is a plate for that head. */
const OWN_HEAD_SHARE = 0.8;
/** Stands in for measures that make no sense; a finding says so. */
const USUAL_HEAD_MM = 540;

/** The barrel of a design: a person's measures first, then the barrel table, then usual proportions. */
export function barrelOf(design: Pick<Design, 'head' | 'surface'>): BarrelMeasures {
  const { head, surface } = design;
  const barrel = head.source.kind === 'barrel' ? barrelById(head.source.barrel) : undefined;
  const smaller = sane(headDiameter(head).smallerMm);
  const [acrossMm, alongMm] =
    head.source.kind === 'measured' ? [sane(head.source.acrossMm), sane(head.source.alongMm)] : [smaller, smaller];
  const side = sideMeasures(head, surface === 'head' ? { kind: 'side', lines: 'along-hoops', spread: false } : surface);
  return proportioned({
    headAcrossMm: acrossMm,
    headAlongMm: alongMm,
    recessMm: headRecess(head).mm,
    staveMm: staveMm(barrel, smaller),
    // On the head's side the outside is only scenery: it may not contradict the head that was measured.
    ...(surface !== 'head' && side && { bilgeMm: side.bilgeMm, endMm: side.endMm, lengthMm: side.lengthMm }),
    ...(surface === 'head' && barrel && outsideOf(barrel)),
  });
}

/**
 * The barrel that one plate of a design is best shown on: the design's own. A plate much smaller than its head gets
 * the smallest barrel of the table that takes it; where none is near, one in usual proportions.
 */
export function fittingBarrel(design: Pick<Design, 'head' | 'surface'>, plateDiameterMm: number): BarrelMeasures {
  const own = barrelOf(design);
  if (design.surface !== 'head') return own;
  const needMm = plateDiameterMm + 2 * design.head.clearanceMm;
  const ownMm = Math.min(own.headAcrossMm, own.headAlongMm);
  if (needMm >= OWN_HEAD_SHARE * ownMm) return own;
  const fits = BARRELS.filter((b) => middle(b.headMm) >= needMm && middle(b.headMm) * OWN_HEAD_SHARE <= needMm);
  const [smallest] = fits.sort((a, b) => middle(a.headMm) - middle(b.headMm));
  const headMm = smallest ? middle(smallest.headMm) : sane(needMm);
  return proportioned({
    headAcrossMm: headMm,
    headAlongMm: headMm,
    recessMm: smallest ? middle(smallest.recessMm) : (own.recessMm * headMm) / ownMm,
    staveMm: staveMm(smallest, headMm),
    ...(smallest && outsideOf(smallest)),
  });
}

function outsideOf(barrel: Barrel): { bilgeMm?: number; lengthMm?: number } {
  return {
    ...(barrel.bilgeMm && { bilgeMm: middle(barrel.bilgeMm) }),
    ...(barrel.heightMm && { lengthMm: middle(barrel.heightMm) }),
  };
}

type Known = Omit<BarrelMeasures, 'bilgeMm' | 'endMm' | 'lengthMm'> & Partial<BarrelMeasures>;

/** Fills in what is not known, and keeps a barrel a barrel where sources contradict each other. */
function proportioned(known: Known): BarrelMeasures {
  const recessMm = Math.min(Math.max(1, known.recessMm), known.headAcrossMm / 3);
  const endMm = known.endMm ?? (known.headAcrossMm + known.headAlongMm) / 2 + 2 * known.staveMm;
  const bilgeMm = Math.max(known.bilgeMm ?? endMm / END_SHARE, endMm * 1.02);
  return { ...known, recessMm, endMm, bilgeMm, lengthMm: known.lengthMm ?? LENGTH_SHARE * bilgeMm };
}

function sane(mm: number): number {
  return Number.isFinite(mm) && mm > 50 ? Math.min(mm, 3000) : USUAL_HEAD_MM;
}
