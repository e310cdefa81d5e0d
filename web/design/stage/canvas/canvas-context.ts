import { createContext, useContext } from 'react';
import type { SizePx } from '../../../ui/size.ts';
import type { StagePalette } from './palette.ts';
import type { Units } from './ruler.ts';
import type { View } from './view.ts';

/** What everything painted on the stage has to know. */
export interface Canvas {
  readonly size: SizePx;
  readonly view: View;
  /** Radius of what is in sight when nothing is enlarged. */
  readonly worldMm: number;
  readonly palette: StagePalette;
  readonly units: Units;
  readonly unitWord: string;
}

/** Provided inside the canvas: its elements are rendered apart from the page's. */
export const CanvasContext = createContext<Canvas | undefined>(undefined);

export function useCanvas(): Canvas {
  const canvas = useContext(CanvasContext);
  if (!canvas) throw new Error('useCanvas outside of the canvas');
  return canvas;
}
