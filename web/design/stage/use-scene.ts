import { use, useEffect, useMemo, useState } from 'react';
import { bringTextures } from '../../barrel/painting/textures.ts';
import type { SizePx } from '../../ui/size.ts';
import type { Theme } from '../../barrel/painting/oak.ts';
import { PALETTES } from './canvas/palette.ts';
import {
  headRadiusMm,
  healScene,
  paintGround,
  paintScene,
  type Ground,
  type Painted,
  type ScenePlate,
  type SceneWish,
} from './scene.ts';
import { viewOf, WHOLE, type Frame, type Look } from './canvas/view.ts';

/** How long the view must rest before the picture is painted sharply for it. */
const REST_MS = 130;

export interface Scene {
  /** Everything, for the stage as a whole: shown beneath, so that a drag never uncovers bare ground. */
  readonly whole: Painted | undefined;
  /** Sharp for the zoomed view at which the person rests. */
  readonly detail: Painted | undefined;
  /** Wood alone, as sharp as there is: what is seen through an opening that is dragged. */
  readonly ground: Painted | undefined;
  /** The plate that is in the picture; undefined while one is being painted for the first time. */
  readonly plate: ScenePlate | undefined;
}

/** Openings lifted out of one plate's picture. */
export interface Lifted {
  readonly of: ScenePlate;
  readonly openings: Path2D;
}

/**
 * Bitmaps of barrel and plate; the ground is kept apart so that typing repaints the plate only. lifted: openings that
 * are being dragged, filled up with metal meanwhile.
 */
export function useScene(
  frame: Frame | undefined,
  look: Look,
  plate: ScenePlate | undefined,
  plateMm: number,
  theme: Theme,
  lifted: Lifted | undefined,
): Scene {
  const rested = useRested(look);
  const width = frame?.size.width;
  const height = frame?.size.height;
  const marginPx = frame?.marginPx;
  const worldMm = frame?.worldMm;

  const wishFor = useMemo(() => {
    if (width === undefined || height === undefined || marginPx === undefined || worldMm === undefined)
      return undefined;
    const size: SizePx = { width, height };
    return (at: Look): SceneWish => ({
      size,
      ratio: Math.min(2, window.devicePixelRatio || 1),
      view: viewOf(at, { size, worldMm, marginPx }),
      plateMm,
      theme,
      palette: PALETTES[theme],
    });
  }, [width, height, marginPx, worldMm, plateMm, theme]);
  const zoomed = rested.zoom > 1;
  const wholeWish = useMemo(() => wishFor?.(WHOLE), [wishFor]);
  const detailWish = useMemo(() => (zoomed ? wishFor?.(rested) : undefined), [wishFor, zoomed, rested]);

  const whole = usePainted(wholeWish, plate, lifted);
  const detail = usePainted(detailWish, plate, lifted);
  return useMemo(
    () => ({
      whole: whole.shown,
      detail: detailWish && detail.shown,
      ground: (detailWish && detail.ground) ?? whole.ground,
      plate: !detailWish || detail.plate === whole.plate ? whole.plate : undefined,
    }),
    [whole, detail, detailWish],
  );
}

let wood: Promise<void> | undefined;

/**
 * What waits for the stage goes on waiting until its first wood and steel are there: painted in the page they would keep
 * a hand waiting for a second on a phone. Another size of head later is painted on the spot.
 */
export function useFirstWood(plateMm: number, theme: Theme): void {
  use((wood ??= bringTextures(headRadiusMm(plateMm) * 2, theme)));
}

/** One picture: painted step by step between other work of the page; the one before is shown until it is done. */
function usePainted(wish: SceneWish | undefined, plate: ScenePlate | undefined, lifted: Lifted | undefined) {
  const [below, setBelow] = useState<{ ground: Ground; wish: SceneWish }>();
  const [done, setDone] = useState<{ painted: Painted; ground: Ground; plate: ScenePlate; theme: Theme }>();
  useEffect(() => {
    if (!wish) return;
    const { painted: ground, steps } = paintGround(wish);
    return inTurn(steps, () => setBelow({ ground, wish }));
  }, [wish]);
  const ready = below && below.wish === wish ? below : undefined;
  useEffect(() => {
    if (!ready || !plate) return;
    const { ground } = ready;
    const { painted, steps } = paintScene(ready.wish, ground, plate);
    return inTurn(steps, () => setDone({ painted, ground, plate, theme: ready.wish.theme }));
  }, [ready, plate]);
  // by night nothing of the day is shown, once there is something else
  const fits = done && wish && plate && (done.theme === wish.theme || !ready) ? done : undefined;
  const healed = useMemo(
    () => (fits && lifted?.of === fits.plate ? healScene(fits.painted, fits.ground, lifted.openings) : fits?.painted),
    [fits, lifted],
  );
  const ground = ready?.ground ?? fits?.ground;
  return useMemo(() => ({ shown: healed ?? ground, ground, plate: fits?.plate }), [healed, ground, fits]);
}

/** Does one step after the other, each as a task of its own, then what comes after them. Gives a way to stop. */
function inTurn(steps: readonly (() => void)[], then: () => void): () => void {
  let timer: ReturnType<typeof setTimeout>;
  const go = (at: number): void => {
    const step = steps[at];
    if (!step) return then();
    step();
    timer = setTimeout(go, 0, at + 1);
  };
  timer = setTimeout(go, 0, 0);
  return () => clearTimeout(timer);
}

function useRested(look: Look): Look {
  const [rested, setRested] = useState(look);
  useEffect(() => {
    if (look === rested) return;
    const timer = setTimeout(() => setRested(look), look.zoom === 1 ? 0 : REST_MS);
    return () => clearTimeout(timer);
  }, [look, rested]);
  return rested;
}
