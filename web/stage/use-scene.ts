import { useEffect, useMemo, useState } from 'react';
import type { SizePx } from '../barrel-view/size.ts';
import type { Theme } from '../barrel-view/oak.ts';
import { PALETTES } from './palette.ts';
import { paintGround, paintScene, type Painted, type ScenePlate } from './scene.ts';
import { viewOf, WHOLE, type Frame, type Look } from './view.ts';

/** How long the view must rest before the picture is painted sharply for it. */
const REST_MS = 130;

export interface Scene {
  /** Everything, for the stage as a whole: shown beneath, so that a drag never uncovers bare ground. */
  readonly whole: Painted | undefined;
  /** Sharp for the zoomed view at which the person rests. */
  readonly detail: Painted | undefined;
  /** Wood alone, as sharp as there is: what is seen through an opening that is dragged. */
  readonly ground: Painted | undefined;
}

/** Bitmaps of barrel and plate; the ground is kept apart so that typing repaints the plate only. */
export function useScene(
  frame: Frame | undefined,
  look: Look,
  plate: ScenePlate | undefined,
  plateMm: number,
  theme: Theme,
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
    return (at: Look) => ({
      size,
      ratio: Math.min(2, window.devicePixelRatio || 1),
      view: viewOf(at, { size, worldMm, marginPx }),
      plateMm,
      theme,
      palette: PALETTES[theme],
    });
  }, [width, height, marginPx, worldMm, plateMm, theme]);

  const wholeGround = useMemo(() => wishFor && paintGround(wishFor(WHOLE)), [wishFor]);
  const whole = useMemo(
    () => (wishFor && wholeGround && plate ? paintScene(wishFor(WHOLE), wholeGround, plate) : wholeGround),
    [wishFor, wholeGround, plate],
  );
  const zoomed = rested.zoom > 1;
  const detailGround = useMemo(
    () => (zoomed && wishFor ? paintGround(wishFor(rested)) : undefined),
    [wishFor, zoomed, rested],
  );
  const detail = useMemo(
    () => (wishFor && detailGround && plate ? paintScene(wishFor(rested), detailGround, plate) : detailGround),
    [wishFor, detailGround, plate, rested],
  );
  const ground = detailGround ?? wholeGround;
  return useMemo(() => ({ whole, detail, ground }), [whole, detail, ground]);
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
