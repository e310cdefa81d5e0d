import { useEffect, useMemo, useRef } from 'react';
import type { PlateResult } from '../../../geometry/plate/plate.ts';
import type { Theme } from '../painting/oak.ts';
import { paintBarrelEnd } from './paint-barrel-end.ts';
import { context } from '../painting/textures.ts';
import { traceRegions } from '../painting/trace.ts';
import { useSize } from '../../ui/use-size.ts';

export interface BarrelEndProps {
  readonly plate: PlateResult | undefined;
  /** Visible head in mm, along the grain of its boards (drawn upright) and across it. */
  readonly head: { readonly alongMm: number; readonly acrossMm: number };
  /** The plate laid in the head, or what it leaves in paint or by the torch. */
  readonly state: 'plate' | 'paint' | 'char';
  /** CSS colour of the paint. */
  readonly paint: string;
  readonly theme: Theme;
  /** What the picture shows, in words. */
  readonly 'aria-label': string;
}

/** The barrel end straight on, filling its parent; painted only when something changes. */
export function BarrelEnd(props: BarrelEndProps) {
  const { plate, state, paint, theme } = props;
  const { alongMm, acrossMm } = props.head;
  const frame = useRef<HTMLDivElement>(null);
  const canvas = useRef<HTMLCanvasElement>(null);
  const size = useSize(frame);

  const onHead = useMemo(() => {
    if (!plate) return undefined;
    const openings = new Path2D();
    traceRegions(
      openings,
      plate.openings.map((o) => o.region),
    );
    return { openings, diameterMm: plate.diameterMm, thicknessMm: plate.rules.thicknessMm };
  }, [plate]);

  useEffect(() => {
    const target = canvas.current;
    if (!target || !size) return;
    const ratio = Math.min(3, window.devicePixelRatio || 1);
    target.width = Math.round(size.width * ratio);
    target.height = Math.round(size.height * ratio);
    paintBarrelEnd(context(target), {
      widthPx: size.width,
      heightPx: size.height,
      ratio,
      head: { alongMm, acrossMm },
      plate: onHead,
      state,
      paint,
      theme,
    });
  }, [size, onHead, alongMm, acrossMm, state, paint, theme]);

  return (
    <div ref={frame} style={{ position: 'relative', width: '100%', height: '100%', overflow: 'hidden' }}>
      <canvas
        ref={canvas}
        role="img"
        aria-label={props['aria-label']}
        style={{ position: 'absolute', inset: 0, width: '100%', height: '100%', display: 'block' }}
      />
    </div>
  );
}
