import { plateDiameterMm } from '../barrel/blank.ts';
import { isText } from '../design/kinds.ts';
import type { Design, TextElement } from '../design/schema.ts';
import { type Finding, sortFindings } from '../findings.ts';
import type { PlateResult } from '../plate/plate.ts';
import { amount, inMm, labelled, said } from '../sentences/say.ts';
import { shortText } from '../sentences/shorten.ts';

/** Plates tried, as shares of the one that fails: common practice, no source. */
const LARGER = [1.1, 1.25, 1.5, 2, 2.5, 3];
/** Found in the letters themselves: neither a shorter text nor a larger plate is an answer to them. */
const NOT_OF_SIZE = ['missing-glyph', 'unknown-face', 'text-overlap', 'too-near-rim', 'band-upside-down'];
const STEP_MM = 5;

/**
 * For each text that stops the cut: at which length it would hold on this plate, and on how large a plate as it is.
 * In: a design and its plate as made. Yields designs to be made; is given the plate made of each. Out: a finding a text; none for what is not cured so. Lengths are looked for by halving: a
 * shorter text is larger, so it is taken to hold where a longer one does.
 */
export function* findWhereItHolds(design: Design, plate: PlateResult): Generator<Design, Finding[], PlateResult> {
  const out: Finding[] = [];
  for (const element of design.elements.filter(isText)) {
    if (!isStopped(plate, element.id)) continue;
    const longest = yield* findLength(design, element);
    const sizeMm = yield* findSize(design, plate, element);
    out.push(holdsAt(plate.plateId, element, longest, sizeMm));
  }
  return out;
}

/** A plate that is refused, with where its texts would hold; any other as it is. */
export function sayWhereItHolds<P extends PlateResult>(
  design: Design,
  plate: P,
  make: (design: Design) => PlateResult,
): P {
  const search = findWhereItHolds(design, plate);
  let next = search.next();
  while (next.done !== true) next = search.next(make(next.value));
  return next.value.length === 0 ? plate : { ...plate, findings: sortFindings([...plate.findings, ...next.value]) };
}

function isStopped({ findings }: PlateResult, elementId: string): boolean {
  const stops = findings.filter((f) => f.severity === 'stop' && f.elementIds.includes(elementId));
  return stops.length > 0 && stops.every(({ code }) => !NOT_OF_SIZE.includes(code));
}

/** Most characters that hold, of the text's beginning; 0 when not even one does. */
function* findLength(design: Design, element: TextElement): Generator<Design, number, PlateResult> {
  const signs = Array.from(element.text.normalize('NFC'));
  let [low, high] = [0, signs.length];
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    const text = signs.slice(0, middle).join('').trimEnd();
    const elements = design.elements.map((e) => (e.id === element.id ? { ...element, text } : e));
    if (holds(yield { ...design, elements }, element.id)) low = middle;
    else high = middle;
  }
  return low;
}

/** The smallest plate tried on which it holds; undefined when none that the head takes does. */
function* findSize(
  design: Design,
  { plateId, diameterMm }: PlateResult,
  element: TextElement,
): Generator<Design, number | undefined, PlateResult> {
  const spec = design.plates.find((p) => p.id === plateId);
  const greatestMm = spec ? plateDiameterMm(design, { ...spec, diameter: 'fit' }).diameterMm : 0;
  for (const share of LARGER) {
    const mm = Math.min(greatestMm, Math.ceil((diameterMm * share) / STEP_MM) * STEP_MM);
    if (mm <= diameterMm) return undefined;
    const plates = design.plates.map((p) => (p.id === plateId ? { ...p, diameter: { mm } } : p));
    if (holds(yield { ...design, plates }, element.id)) return mm;
    if (mm === greatestMm) return undefined;
  }
  return undefined;
}

function holds({ findings }: PlateResult, elementId: string): boolean {
  return !findings.some((f) => f.severity === 'stop' && f.elementIds.includes(elementId));
}

function holdsAt(plateId: string, element: TextElement, longest: number, sizeMm: number | undefined): Finding {
  const text = shortText(element.text);
  const count = amount(longest);
  const size = sizeMm === undefined ? undefined : inMm(sizeMm);
  const shorter = longest > 0;
  return {
    code: 'holds-at',
    severity: 'look',
    place: { kind: 'plate' },
    elementIds: [element.id],
    ...(size === undefined
      ? shorter
        ? said('findings.holdsShorter', { text, count })
        : said('findings.holdsNowhere', { text })
      : said(shorter ? 'findings.holdsShorterOrLarger' : 'findings.holdsLarger', { text, count, size })),
    ...(sizeMm !== undefined && {
      mend: {
        ...labelled('mends.diameter', { size: inMm(sizeMm) }),
        change: { kind: 'set-plate-diameter', plateId, diameter: { mm: sizeMm } },
      },
    }),
  };
}
