import type { Border } from '../design/schema.ts';
import type { Finding, Place } from '../findings.ts';
import { clockPoint } from '../measure/clock.ts';
import type { Outline, Placement } from '../shapes.ts';
import { WEB_SPARE_MM } from '../units.ts';
import { arcCurves, circleCurves } from './arc-curves.ts';
import type { LayoutRules } from './layout-rules.ts';
import type { Layout, PlacedShape } from './placed.ts';
import { mostStrands, strandOutline } from './rope.ts';
import { bandUpsideDownFinding } from './text-findings.ts';
import { said, say } from '../sentences/say.ts';

/**
 * Borders about the plate's centre. Pieces are alike, evenly spread, and one stands (or, with ropes, lies) at the
 * top, so the border is symmetric about the upright axis. Between two pieces stays at least the least web and the
 * least bridge; too many pieces for that are made fewer, and it is said.
 */
export function layBorder(element: Border, radiusMm: number, rules: LayoutRules): Layout {
  const innerMm = element.inner * radiusMm;
  const outerMm = element.outer * radiusMm;
  const place: Place = { kind: 'band', innerMm: Math.min(innerMm, outerMm), outerMm: Math.max(innerMm, outerMm) };
  const result = (shapes: readonly PlacedShape[], findings: readonly Finding[]): Layout => ({
    shapes,
    extents: [
      {
        kind: 'sector',
        elementId: element.id,
        innerMm: place.innerMm,
        outerMm: place.outerMm,
        startDeg: 0,
        endDeg: 360,
      },
    ],
    findings,
  });
  if (innerMm >= outerMm) return result([], [bandUpsideDownFinding(element.id, element.inner, element.outer, place)]);
  if (element.style === 'ring') return result([ringShape(element.id, innerMm, outerMm)], []);

  const gapMm = Math.max(rules.leastWebMm, rules.leastBridgeMm) + WEB_SPARE_MM;
  const openingMm = rules.leastOpeningMm;
  const band: Band = {
    innerMm,
    outerMm,
    widthMm: outerMm - innerMm,
    middleMm: (innerMm + outerMm) / 2,
    gapMm,
    openingMm,
  };
  const style = STYLES[element.style];
  const wanted = element.count === 'auto' ? style.auto(band) : element.count;
  const most = Math.floor(style.most(band, wanted));
  if (most < 2) return result([], [tooTight(element.id, place)]);
  const count = Math.max(2, Math.min(wanted, most));
  const findings = element.count !== 'auto' && element.count > most ? [fewer(element, style.word, most, place)] : [];
  return result(style.shapes(element.id, band, count), findings);
}

interface Band {
  readonly innerMm: number;
  readonly outerMm: number;
  readonly widthMm: number;
  readonly middleMm: number;
  /** Metal to leave between two pieces. */
  readonly gapMm: number;
  /** Narrowest opening the process can cut. */
  readonly openingMm: number;
}

/** What a border is made of, as the table of words names it. */
type Pieces = 'dashes' | 'beads' | 'strands';

interface Style {
  readonly word: Pieces;
  auto(band: Band): number;
  /** As many pieces as the band takes; where that is costly to find, it need not look beyond what is wanted. */
  most(band: Band, wanted: number): number;
  shapes(elementId: string, band: Band, count: number): PlacedShape[];
}

const STYLES: Record<'dashes' | 'beads' | 'rope', Style> = {
  dashes: {
    word: 'dashes',
    // Three times as long as wide, in fours so that the four quarters look alike.
    auto: (band) => Math.max(4, 4 * Math.round(roundMm(band) / (3 * band.widthMm + dashGapMm(band)) / 4)),
    // Measured at the inner edge, where dashes are shortest: an opening as wide as the process can cut is left.
    most: (band) => piecesRound((band.gapMm + band.openingMm) / 2 / band.innerMm),
    shapes: dashShapes,
  },
  beads: {
    word: 'beads',
    auto: (band) => {
      const pitchMm = band.widthMm + Math.max(band.gapMm, 0.5 * band.widthMm);
      return Math.max(4, 4 * Math.floor(piecesRound(pitchMm / 2 / band.middleMm) / 4));
    },
    most: (band) => piecesRound((band.widthMm + band.gapMm) / 2 / band.middleMm),
    shapes: beadShapes,
  },
  rope: {
    word: 'strands',
    auto: (band) => {
      const pitchMm = Math.max(1.05 * band.widthMm, 2.6 * band.gapMm);
      return Math.max(4, 4 * Math.round(roundMm(band) / pitchMm / 4));
    },
    most: (band, wanted) => mostStrands(band.innerMm, band.outerMm, band.gapMm, band.openingMm, wanted),
    shapes: ropeShapes,
  },
};

function ringShape(elementId: string, innerMm: number, outerMm: number): PlacedShape {
  const centre = { x: 0, y: 0 };
  const outline: Outline = [
    ...circleCurves(centre, outerMm, false),
    ...(innerMm > 0 ? circleCurves(centre, innerMm, true) : []),
  ];
  return shape(elementId, 0, 'ring', `ring|${innerMm}|${outerMm}`, outline, { x: 0, y: 0, turnDeg: 0 });
}

/** Gaps are straight bars of even width that point to the centre, so every bridge between dashes is as wide all along. */
function dashShapes(elementId: string, band: Band, count: number): PlacedShape[] {
  const gapMm = Math.min(dashGapMm(band), (2 * Math.PI * band.innerMm) / count / 2);
  const half = Math.max(gapMm, band.gapMm) / 2;
  const outerDeg = 180 / count - sineDeg(half / band.outerMm);
  const innerDeg = 180 / count - sineDeg(half / band.innerMm);
  const centre = { x: 0, y: 0 };
  const start = clockPoint(band.outerMm, outerDeg);
  const turn = clockPoint(band.innerMm, -innerDeg);
  const outline: Outline = [
    { type: 'M', ...start },
    ...arcCurves(centre, band.outerMm, outerDeg, -outerDeg),
    { type: 'L', ...turn },
    ...arcCurves(centre, band.innerMm, -innerDeg, innerDeg),
    { type: 'Z' },
  ];
  const key = `dash|${band.innerMm}|${band.outerMm}|${count}|${half}`;
  return around(count).map((turnDeg, i) => shape(elementId, i, 'dash', key, outline, { x: 0, y: 0, turnDeg }));
}

function beadShapes(elementId: string, band: Band, count: number): PlacedShape[] {
  const outline = circleCurves({ x: 0, y: 0 }, band.widthMm / 2, false);
  const key = `bead|${band.widthMm}`;
  return around(count).map((turnDeg, i) =>
    shape(elementId, i, 'bead', key, outline, { ...clockPoint(band.middleMm, turnDeg), turnDeg }),
  );
}

function ropeShapes(elementId: string, band: Band, count: number): PlacedShape[] {
  const outline = strandOutline(band.innerMm, band.outerMm, count, band.gapMm, band.openingMm);
  const key = `strand|${band.innerMm}|${band.outerMm}|${count}|${band.gapMm}|${band.openingMm}`;
  return around(count).map((turnDeg, i) => shape(elementId, i, 'strand', key, outline, { x: 0, y: 0, turnDeg }));
}

function shape(
  elementId: string,
  number: number,
  label: string,
  storeKey: string,
  outline: Outline,
  placement: Placement,
): PlacedShape {
  return { id: `${elementId}/${number}`, elementId, label, storeKey, outline, placement, word: 0 };
}

function around(count: number): number[] {
  return Array.from({ length: count }, (_, i) => (i * 360) / count);
}

function roundMm(band: Band): number {
  return 2 * Math.PI * band.middleMm;
}

function dashGapMm(band: Band): number {
  return Math.max(band.gapMm, 0.6 * band.widthMm);
}

/** How many pieces go round when half the pitch of one, over the radius, has this sine; 1 when not even two do. */
function piecesRound(sine: number): number {
  return sine > 1 ? 1 : 180 / sineDeg(sine);
}

/** Arcsine in degrees; past the end of the sine, a right angle. */
function sineDeg(sine: number): number {
  return (Math.asin(Math.min(1, sine)) * 180) / Math.PI;
}

function tooTight(elementId: string, place: Place): Finding {
  return {
    code: 'border-too-tight',
    severity: 'stop',
    place,
    elementIds: [elementId],
    ...said('findings.borderTight'),
  };
}

function fewer(element: Border, word: Pieces, most: number, place: Place): Finding {
  return {
    code: 'border-too-crowded',
    severity: 'look',
    place,
    elementIds: [element.id],
    ...said('findings.borderCrowded', { count: Number(element.count), pieces: say(`names.${word}`), most }),
  };
}
