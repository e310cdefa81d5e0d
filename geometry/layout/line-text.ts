import type { FaceSource } from '../adapters/face.ts';
import type { LineText } from '../design/schema.ts';
import type { Finding, Place } from '../findings.ts';
import { placePoint } from '../measure/clock.ts';
import type { Placement, Point } from '../shapes.ts';
import { largestFitting, trackingToFit } from './fit-size.ts';
import type { LayoutRules } from './layout-rules.ts';
import { emForCapHeight, readText } from './letters.ts';
import type { Extent, Layout } from './placed.ts';
import { accentWebMm } from './part-accents.ts';
import { straightRail } from './rail.ts';
import { shapesOf } from './set-letters.ts';
import { shortText } from '../sentences/shorten.ts';
import { spaceLetters } from './spacing.ts';
import { characterFindings, outsidePlateFinding, spreadFinding, unknownFaceFinding } from './text-findings.ts';
import { inMm, labelled, said } from '../sentences/say.ts';
import { LEAST_SAID_MM } from '../units.ts';

/** Lettering on a straight line, its ink centred on x and half the height of its capitals on y. */
export function layLineText(asked: LineText, radiusMm: number, rules: LayoutRules, faces: FaceSource): Layout {
  const element = sizedToSpan(asked, radiusMm, rules, faces);
  const capMm = element.capHeight * radiusMm;
  const move: Placement = { x: element.x * radiusMm, y: element.y * radiusMm, turnDeg: element.turnDeg };
  const nothing = (findings: Finding[]): Layout => ({
    shapes: [],
    extents: [box(element, move, 2 * capMm, capMm)],
    findings,
  });
  const around = (widthMm: number): Place => ({ kind: 'ring', ring: corners(widthMm, capMm, move) });
  const face = faces.get(element.face);
  if (!face) return nothing([unknownFaceFinding(element, around(2 * capMm))]);

  const emMm = emForCapHeight(face, capMm);
  const read = readText(element.text, face, emMm, accentWebMm(element, rules), element);
  if (!read.letters.some((letter) => letter.glyph)) {
    return nothing(characterFindings(element, read, face.name, around(2 * capMm)));
  }

  const rail = straightRail(capMm);
  const spanMm = element.fit === 'natural' ? undefined : element.fit.width * radiusMm;
  const spacing = spaceLetters(read.letters, face, rail, {
    emMm,
    capMm,
    trackingMm: element.tracking * capMm,
    leastWebMm: rules.leastWebMm,
    ...(spanMm !== undefined && { spanMm }),
  });
  const shapes = shapesOf(element.id, read.letters, spacing, rail, move);
  const widthMm = spacing.toMm - spacing.fromMm;
  const place = around(widthMm);

  const findings = characterFindings(element, read, face.name, place);
  if (spacing.overSpan && spanMm !== undefined) findings.push(squeezed(element, spanMm, widthMm, place));
  if (spacing.spreadMm > LEAST_SAID_MM) {
    const at = placePoint({ x: spacing.atMm[spacing.spreadAt] ?? 0, y: 0 }, move);
    findings.push(spreadFinding(element, spacing.spreadMm, rules.leastWebMm, { kind: 'point', at, radiusMm: capMm }));
  }
  if (shapes.reachMm > radiusMm + LEAST_SAID_MM) {
    findings.push(
      outsidePlateFinding(
        element,
        shapes.reachMm,
        radiusMm,
        place,
        mendOutside(element, move, shapes.reachMm, radiusMm),
      ),
    );
  }
  return { shapes: shapes.placed, extents: [box(element, move, widthMm, capMm)], findings };
}

/** A text that fills its width by size, as natural text of the size it then has; all others as they are. */
function sizedToSpan(element: LineText, radiusMm: number, rules: LayoutRules, faces: FaceSource): LineText {
  const face = faces.get(element.face);
  if (element.fit === 'natural' || element.fit.by !== 'size' || !face) return element;
  const [askedMm, spanMm] = [element.capHeight * radiusMm, element.fit.width * radiusMm];
  const inkAt = (mm: number, tracking: number) => {
    const emMm = emForCapHeight(face, mm);
    const { letters } = readText(element.text, face, emMm, accentWebMm(element, rules), element);
    const wish = { emMm, capMm: mm, trackingMm: tracking * mm, leastWebMm: rules.leastWebMm };
    const { fromMm, toMm } = spaceLetters(letters, face, straightRail(mm), wish);
    return toMm - fromMm;
  };
  const tracking = trackingToFit(element, spanMm, (t) => inkAt(askedMm, t));
  const capMm = largestFitting(askedMm, spanMm, (mm) => inkAt(mm, tracking));
  return { ...element, tracking, capHeight: capMm / radiusMm, fit: 'natural' };
}

/** A smaller text would not be worth the click. */
const LEAST_SHARE = 0.1;

function box(element: LineText, at: Placement, widthMm: number, heightMm: number): Extent {
  return { kind: 'box', elementId: element.id, x: at.x, y: at.y, widthMm, heightMm, turnDeg: element.turnDeg };
}

function corners(widthMm: number, heightMm: number, at: Placement): Point[] {
  const [w, h] = [widthMm / 2, heightMm / 2];
  return [
    { x: -w, y: -h },
    { x: w, y: -h },
    { x: w, y: h },
    { x: -w, y: h },
  ].map((p) => placePoint(p, at));
}

/**
 * Scaled about its own middle, a text whose farthest ink is at reach comes inside when the middle's distance and
 * the scaled rest stay under the radius (triangle inequality: safe, sometimes a little smaller than needed).
 */
function mendOutside(element: LineText, middle: Placement, reachMm: number, radiusMm: number): Finding['mend'] {
  const away = Math.hypot(middle.x, middle.y);
  const share = Math.floor(((0.97 * radiusMm - away) / (reachMm + away)) * 100) / 100;
  const centred = Math.floor(((0.97 * radiusMm) / reachMm) * 100) / 100;
  const wanted = away === 0 ? centred : share;
  if (wanted < LEAST_SHARE) return undefined;
  return {
    ...labelled('mends.size', { percent: Math.round(wanted * 100) }),
    change: { kind: 'scale-text', elementId: element.id, share: wanted },
  };
}

function squeezed(element: LineText, spanMm: number, widthMm: number, place: Place): Finding {
  const share = Math.floor((spanMm / widthMm) * 98) / 100;
  return {
    code: 'text-squeezed',
    severity: 'look',
    place,
    elementIds: [element.id],
    measuredMm: widthMm,
    limitMm: spanMm,
    ...said('findings.textSqueezed', { text: shortText(element.text), room: inMm(spanMm), takes: inMm(widthMm) }),
    ...(share >= LEAST_SHARE && {
      mend: {
        ...labelled('mends.size', { percent: Math.round(share * 100) }),
        change: { kind: 'scale-text', elementId: element.id, share },
      },
    }),
  };
}
