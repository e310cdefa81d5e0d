import type { FaceSource } from '../adapters/face.ts';
import type { RingText } from '../design/schema.ts';
import type { Finding, Place } from '../findings.ts';
import { clockPoint } from '../measure/clock.ts';
import { largestFitting, trackingToFit } from './fit-size.ts';
import type { LayoutRules } from './layout-rules.ts';
import { emForCapHeight, readText } from './letters.ts';
import type { Extent, Layout } from './placed.ts';
import { accentWebMm } from './part-accents.ts';
import { ringRail } from './rail.ts';
import { shapesOf } from './set-letters.ts';
import { gapAlong, spaceLetters } from './spacing.ts';
import { shortText } from '../sentences/shorten.ts';
import {
  bandUpsideDownFinding,
  characterFindings,
  outsidePlateFinding,
  spreadFinding,
  unknownFaceFinding,
} from './text-findings.ts';
import { amount, labelled, said } from '../sentences/say.ts';
import { LEAST_SAID_MM } from '../units.ts';

/** Lettering along the rim: letters stay rigid and are turned about the centre; capitals fill the band. */
export function layRingText(asked: RingText, radiusMm: number, rules: LayoutRules, faces: FaceSource): Layout {
  const element = sizedToSpan(asked, radiusMm, rules, faces);
  const innerMm = element.inner * radiusMm;
  const outerMm = element.outer * radiusMm;
  const place: Place = { kind: 'band', innerMm: Math.min(innerMm, outerMm), outerMm: Math.max(innerMm, outerMm) };
  const nothing = (findings: Finding[]): Layout => ({
    shapes: [],
    extents: [sector(element, place.innerMm, place.outerMm, -EMPTY_HALF_DEG, EMPTY_HALF_DEG)],
    findings,
  });
  if (innerMm >= outerMm) return nothing([bandUpsideDownFinding(element.id, element.inner, element.outer, place)]);
  const face = faces.get(element.face);
  if (!face) return nothing([unknownFaceFinding(element, place)]);

  const capMm = outerMm - innerMm;
  const emMm = emForCapHeight(face, capMm);
  const spanDeg = element.fit === 'natural' ? undefined : element.fit.spanDeg;
  const closed = spanDeg === 360;
  const read = readText(element.text, face, emMm, accentWebMm(element, rules), { keepEnds: closed });
  const findings = characterFindings(element, read, face.name, place);
  if (!read.letters.some((letter) => letter.glyph)) return nothing(findings);

  const rail = ringRail(innerMm, outerMm, element.reads);
  const middleMm = (innerMm + outerMm) / 2;
  const roundMm = 2 * Math.PI * middleMm;
  const spacing = spaceLetters(read.letters, face, rail, {
    emMm,
    capMm,
    trackingMm: element.tracking * capMm,
    leastWebMm: rules.leastWebMm,
    ...(spanDeg !== undefined && (closed ? { closedMm: roundMm } : { spanMm: (spanDeg / 360) * roundMm })),
  });
  const shapes = shapesOf(element.id, read.letters, spacing, rail, { x: 0, y: 0, turnDeg: element.middleDeg });

  const degOf = (mm: number) => (mm / roundMm) * 360;
  const sense = element.reads === 'outward' ? 1 : -1;
  const inkDeg = degOf(spacing.toMm - spacing.fromMm);
  const half = Math.min(180, inkDeg / 2);
  const [first, last] = [read.letters.find((l) => l.glyph), read.letters.findLast((l) => l.glyph)];
  const firstAt = spacing.atMm[first ? read.letters.indexOf(first) : 0] ?? 0;
  const lastAt = spacing.atMm[last ? read.letters.indexOf(last) : 0] ?? 0;
  const endsMeet =
    first !== undefined &&
    last !== undefined &&
    first !== last &&
    inkDeg > ENDS_NEAR_DEG &&
    gapAlong(rail, last, first, firstAt + roundMm - lastAt, rules.leastWebMm) !== undefined;

  if (inkDeg > 360 || endsMeet) findings.push(tooLong(element, inkDeg, place));
  else if (inkDeg > NEARLY_ROUND_DEG && !closed) findings.push(nearlyRound(element, inkDeg, place));
  if (spacing.overSpan && spanDeg !== undefined) findings.push(squeezed(element, spanDeg, inkDeg, place));
  if (spacing.spreadMm > LEAST_SAID_MM) {
    const deg = element.middleDeg + sense * degOf(spacing.atMm[spacing.spreadAt] ?? 0);
    const at: Place = { kind: 'point', at: clockPoint(middleMm, deg), radiusMm: capMm };
    findings.push(spreadFinding(element, spacing.spreadMm, rules.leastWebMm, at));
  }
  const over = shapes.reachMm - radiusMm;
  if (over > LEAST_SAID_MM) {
    const inwards = over / radiusMm + MEND_SPARE;
    const mend: Finding['mend'] =
      element.inner > inwards
        ? {
            ...labelled('mends.moveIn'),
            change: {
              kind: 'move-band',
              elementId: element.id,
              inner: element.inner - inwards,
              outer: element.outer - inwards,
            },
          }
        : undefined;
    findings.push(outsidePlateFinding(element, shapes.reachMm, radiusMm, place, mend));
  }
  return { shapes: shapes.placed, extents: [sector(element, innerMm, outerMm, -half, half)], findings };
}

/**
 * A text that fills its span by size, as natural text of the size it then has: in the middle of the band it was given,
 * so that the angle per millimetre is the same at every size. All others as they are.
 */
function sizedToSpan(element: RingText, radiusMm: number, rules: LayoutRules, faces: FaceSource): RingText {
  const face = faces.get(element.face);
  if (element.fit === 'natural' || element.fit.by !== 'size' || !face || element.inner >= element.outer) return element;
  const middleMm = ((element.inner + element.outer) / 2) * radiusMm;
  const askedMm = (element.outer - element.inner) * radiusMm;
  const { spanDeg } = element.fit;
  // All round, the ends still stand apart as words do.
  const apartMm = spanDeg === 360 ? (WORD_GAP + Math.max(0, element.tracking)) * askedMm : 0;
  const spanMm = (spanDeg / 180) * Math.PI * middleMm - apartMm;
  const inkAt = (mm: number, tracking: number) => {
    const emMm = emForCapHeight(face, mm);
    const { letters } = readText(element.text, face, emMm, accentWebMm(element, rules));
    const rail = ringRail(middleMm - mm / 2, middleMm + mm / 2, element.reads);
    const wish = { emMm, capMm: mm, trackingMm: tracking * mm, leastWebMm: rules.leastWebMm };
    const { fromMm, toMm } = spaceLetters(letters, face, rail, wish);
    return toMm - fromMm;
  };
  const tracking = trackingToFit(element, spanMm, (t) => inkAt(askedMm, t));
  const capMm = largestFitting(askedMm, spanMm, (mm) => inkAt(mm, tracking));
  const half = capMm / radiusMm / 2;
  const middle = middleMm / radiusMm;
  return { ...element, tracking, inner: middle - half, outer: middle + half, fit: 'natural' };
}

/** Metal between end and beginning of a text sized to go all round, in heights of a capital: common practice, no source. */
const WORD_GAP = 0.6;
/** Shown for an empty text, so that it can still be chosen on the stage. */
const EMPTY_HALF_DEG = 12;
/** A text that reached past the rim is moved in by this share of the radius more than it must. */
const MEND_SPARE = 0.01;
const NEARLY_ROUND_DEG = 340;
/** Below this the two ends of a text cannot be near each other. */
const ENDS_NEAR_DEG = 270;

function sector(element: RingText, innerMm: number, outerMm: number, from: number, to: number): Extent {
  return {
    kind: 'sector',
    elementId: element.id,
    innerMm,
    outerMm,
    startDeg: element.middleDeg + from,
    endDeg: element.middleDeg + to,
  };
}

function tooLong(element: RingText, inkDeg: number, place: Place): Finding {
  const share = Math.min(0.98, 330 / inkDeg);
  return {
    code: 'text-too-long-for-ring',
    severity: 'stop',
    place,
    elementIds: [element.id],
    ...said('findings.ringTooLong', { text: shortText(element.text) }),
    mend: {
      ...labelled('mends.size', { percent: Math.floor(share * 100) }),
      change: { kind: 'scale-text', elementId: element.id, share: Math.floor(share * 100) / 100 },
    },
  };
}

function nearlyRound(element: RingText, inkDeg: number, place: Place): Finding {
  return {
    code: 'text-too-long-for-ring',
    severity: 'look',
    place,
    elementIds: [element.id],
    ...said('findings.ringNearlyRound', { text: shortText(element.text), turn: amount(inkDeg) }),
    mend: {
      ...labelled('mends.size', { percent: 90 }),
      change: { kind: 'scale-text', elementId: element.id, share: 0.9 },
    },
  };
}

function squeezed(element: RingText, spanDeg: number, inkDeg: number, place: Place): Finding {
  const share = Math.floor((spanDeg / inkDeg) * 98) / 100;
  return {
    code: 'text-squeezed',
    severity: 'look',
    place,
    elementIds: [element.id],
    ...said('findings.textSqueezedRound', {
      text: shortText(element.text),
      room: amount(spanDeg, 1),
      takes: amount(inkDeg, 1),
    }),
    ...(share >= 0.1 && {
      mend: {
        ...labelled('mends.size', { percent: Math.round(share * 100) }),
        change: { kind: 'scale-text', elementId: element.id, share },
      },
    }),
  };
}
