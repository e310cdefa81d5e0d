/** How near to the span the found size comes, as a share of it, unless it runs out of tries. */
const NEAR = 0.001;
const MOST_TRIES = 24;
/** Below this share of what was asked nobody could read it; the text then takes more than its span, and it is said. */
const LEAST_SHARE = 0.05;

/**
 * The largest height of capitals, no taller than asked, at which a text's natural ink goes into a span.
 * In: the height asked for and the span (mm), and how long the ink is at a height (it grows with it). Out: a height in
 * mm whose ink is at most the span and, below the asked height, at least 99.9 % of it; the least height tried when
 * not even that fits. Looked for by the line through the last two tries, kept between what fits and what does not.
 */
export function largestFitting(askedMm: number, spanMm: number, inkAt: (heightMm: number) => number): number {
  const asked = inkAt(askedMm);
  if (asked <= spanMm) return askedMm;
  const leastMm = askedMm * LEAST_SHARE;
  let low = { mm: leastMm, ink: inkAt(leastMm) };
  if (low.ink > spanMm) return leastMm;
  let high = { mm: askedMm, ink: asked };
  for (let i = 0; i < MOST_TRIES && low.ink < spanMm * (1 - NEAR) && high.mm - low.mm > leastMm * NEAR; i++) {
    // Aimed a hair below the span, so that the try is one that fits; every third try halves, whatever the line says.
    const along = (spanMm * (1 - NEAR / 2) - low.ink) / (high.ink - low.ink);
    const share = i % 3 === 2 || !(along > 0 && along < 1) ? 0.5 : along;
    const mm = low.mm + (high.mm - low.mm) * share;
    const ink = inkAt(mm);
    if (ink <= spanMm) low = { mm, ink };
    else high = { mm, ink };
  }
  return low.mm;
}

/** Letters closer than this, as a share of their height, no longer look spaced: common practice, no source. */
const TIGHT = 0.04;

/**
 * The spacing at which a text goes into its span at the size asked for. One that takes what room there is gives up
 * spacing before size, down to TIGHT; any other keeps its own.
 * In: the text, the span in mm, and how long its ink is at a spacing. Out: a share of the height of its capitals.
 */
export function trackingToFit(
  { tracking, room }: { readonly tracking: number; readonly room?: number | undefined },
  spanMm: number,
  inkAt: (tracking: number) => number,
): number {
  if (room === undefined || tracking <= TIGHT) return tracking;
  const wide = inkAt(tracking);
  if (wide <= spanMm) return tracking;
  const tight = inkAt(TIGHT);
  if (tight >= spanMm) return TIGHT;
  // the ink grows evenly with the spacing, but where letters keep a web apart: a hair less is safe
  return TIGHT + (tracking - TIGHT) * Math.max(0, (spanMm - tight) / (wide - tight) - 0.001);
}
