/**
 * Where the middle of the beam runs, so that what is left has its true size.
 *
 * In: the contours of a plate and the width of the kerf. Out: for every contour its path, half a kerf inside the waste,
 * with the waste always to its left: openings counter-clockwise, pieces left inside an opening and the rim clockwise.
 * A kerf swept along the path gives back the contour within 0.02 mm, but for corners sharper than a round beam is.
 * What is too narrow for the kerf is told.
 *
 * 1. An opening, flattened finely, is shrunk by half a kerf: what is left is where the beam's middle may be.
 * 2. Its edges are the paths, lines and arcs again. One that falls into parts is cut in parts.
 * 3. Grown back by half a kerf it shows which narrow places the beam never reached.
 */
import { offset, ringsOf, subtract } from '../../adapters/clipper.ts';
import { circleContour, contourAreaMm2, contourToRing } from '../../measure/arc.ts';
import { fitArcs } from '../../measure/fit-arcs.ts';
import { regionAreaMm2, ringHolds, signedAreaMm2 } from '../../measure/ring.ts';
import type { Contour, Point, Region, Ring } from '../../shapes.ts';
import type { CutPlan, OpeningContour } from '../cut-plan.ts';
import { KERF_CRUMB_MM2, KERF_FIT_MM, KERF_FLATTEN_MM } from '../../units.ts';

/** More than a sharp corner leaves: of 20 degrees a beam of radius r leaves 4.3 r2 uncut. */
const NARROW_SHARE = 4.3;

export interface KerfPath {
  readonly id: string;
  readonly net: Contour;
  readonly path: Contour;
}

/** The paths of one opening, inner ones first, and where the beam's middle may be. */
export interface KerfOpening {
  readonly id: string;
  readonly word: string;
  readonly isLoose: boolean;
  readonly paths: readonly KerfPath[];
  readonly inset: Region;
}

export interface KerfTrouble {
  /** narrow: some of it is not reached; parted: cut in several parts; lost: nothing of it can be cut. */
  readonly kind: 'narrow' | 'parted' | 'lost';
  readonly opening: string;
  readonly at: Point;
}

export interface KerfPlate {
  readonly openings: readonly KerfOpening[];
  readonly rim: KerfPath;
  readonly rimRadiusMm: number;
  readonly troubles: readonly KerfTrouble[];
}

export function offsetByKerf(plan: CutPlan, kerfMm: number): KerfPlate {
  const openings: KerfOpening[] = [];
  const troubles: KerfTrouble[] = [];
  for (const contours of groupByOpening(plan)) {
    const found = offsetOpening(contours, kerfMm / 2);
    openings.push(...found.openings);
    troubles.push(...found.troubles);
  }
  const rim = plan.contours.find((c) => c.kind === 'rim');
  const radius = (rim?.diameterMm ?? 0) / 2;
  return {
    openings,
    rim: { id: 'rim', net: circleContour(radius), path: circleContour(radius + kerfMm / 2, undefined, -1) },
    rimRadiusMm: radius + kerfMm / 2,
    troubles,
  };
}

function groupByOpening(plan: CutPlan): OpeningContour[][] {
  const byId = new Map<string, OpeningContour[]>();
  for (const c of plan.contours) {
    if (c.kind !== 'opening') continue;
    const id = c.id.replace(/\/hole\d+$/, '');
    const known = byId.get(id);
    if (known) known.push(c);
    else byId.set(id, [c]);
  }
  return [...byId.values()];
}

function offsetOpening(
  contours: readonly OpeningContour[],
  half: number,
): { openings: KerfOpening[]; troubles: KerfTrouble[] } {
  const outer = contours.find((c) => contourAreaMm2(c.contour) > 0);
  if (!outer) return { openings: [], troubles: [] };
  const holes = contours.filter((c) => c !== outer);
  const flat = (c: OpeningContour): Ring => contourToRing(c.contour, KERF_FLATTEN_MM);
  const net: Region = { outer: flat(outer), holes: holes.map(flat) };
  const { insets, isWhole } = findInsets(net, half);
  if (insets.length === 0) return { openings: [], troubles: [{ kind: 'lost', opening: outer.id, at: net.outer[0]! }] };
  const troubles: KerfTrouble[] = insets.slice(1).map((r) => ({ kind: 'parted', opening: outer.id, at: r.outer[0]! }));
  const unreached = subtract([net], ringsOf(offset(insets, half + KERF_FIT_MM, KERF_FLATTEN_MM)));
  const narrow = unreached.find((r) => Math.abs(signedAreaMm2(r.outer)) > NARROW_SHARE * half * half);
  if (narrow) troubles.push({ kind: 'narrow', opening: outer.id, at: narrow.outer[0]! });
  const openings = insets.map((inset, i): KerfOpening => {
    const id = i === 0 ? outer.id : `${outer.id}~${i + 1}`;
    const inner = inset.holes.map((ring, k): KerfPath => {
      const own = holes.find((h) => ringHolds(ring, h.contour[0]!));
      const path = fitArcs(ring, KERF_FIT_MM);
      return { id: own?.id ?? `${id}/inner${k + 1}`, net: own?.contour ?? traceRemains(path, half), path };
    });
    const path = fitArcs(inset.outer, KERF_FIT_MM);
    // A part, and one with a tail that stays, has as its net what its own cut leaves.
    const own = isWhole && !narrow ? outer.contour : traceRemains(path, half);
    return {
      id,
      word: outer.word,
      isLoose: outer.isLoose === true,
      paths: [...inner, { id, net: own, path }],
      inset,
    };
  });
  return { openings, troubles };
}

/**
 * Where the beam's middle may be. What is too narrow for a path that is fitted within KERF_FIT_MM is left out, and what hangs
 * together by such a neck is parted: its path would cross itself.
 */
function findInsets(net: Region, half: number): { insets: Region[]; isWhole: boolean } {
  const all = offset([net], -half, KERF_FLATTEN_MM / 2);
  const wide = offset(offset([net], -half - KERF_FIT_MM, KERF_FLATTEN_MM / 2), KERF_FIT_MM, KERF_FLATTEN_MM / 2);
  const lost = subtract(all, ringsOf(offset(wide, 2 * KERF_FIT_MM, KERF_FLATTEN_MM)));
  const isWhole = all.length === 1 && wide.length === 1 && !lost.some((r) => regionAreaMm2(r) > KERF_CRUMB_MM2);
  return { insets: isWhole ? all : wide, isWhole };
}

/** The contour that a beam leaves whose middle runs on the path; the waste is to the path's left. */
function traceRemains(path: Contour, half: number): Contour {
  const ring = contourToRing(path, KERF_FLATTEN_MM);
  const around = signedAreaMm2(ring) > 0;
  const area = offset(
    [{ outer: around ? ring : [...ring].reverse(), holes: [] }],
    around ? half : -half,
    KERF_FLATTEN_MM / 2,
  );
  const fitted = fitArcs(area[0]?.outer ?? ring, KERF_FIT_MM);
  return around ? fitted : reverseContour(fitted);
}

function reverseContour(contour: Contour): Contour {
  const n = contour.length;
  return contour.map((_, i) => {
    const { x, y } = contour[n - 1 - i]!;
    return { x, y, bulge: -contour[(2 * n - 2 - i) % n]!.bulge };
  });
}
