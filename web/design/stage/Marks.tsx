import type { Finding } from '../../../geometry/findings.ts';
import type { Extent } from '../../../geometry/layout/placed.ts';
import { traceRing } from '../../barrel/painting/trace.ts';
import { traceExtent } from './extent-path.ts';
import { PlateShape } from './canvas/PlateShape.tsx';

/** Bridges in copper: only the metal that would have been cut away without them. */
export function BridgeTint(props: {
  readonly bars: Path2D;
  readonly unbridged: Path2D;
  /** They are worked on: brighter, with a pale edge. */
  readonly worked: boolean;
}) {
  return (
    <PlateShape
      paint={(ctx, px, palette) => {
        ctx.clip(props.unbridged, 'evenodd');
        if (props.worked) {
          ctx.strokeStyle = palette.copperHalo;
          ctx.lineWidth = 2.5 * px;
          ctx.stroke(props.bars);
        }
        ctx.fillStyle = props.worked ? palette.bridgeWorked : palette.bridge;
        ctx.fill(props.bars);
      }}
    />
  );
}

/** A fine copper line around an element; faint while the pointer only passes over it. */
export function ElementOutline(props: { readonly extents: readonly Extent[]; readonly faint: boolean }) {
  return (
    <PlateShape
      paint={(ctx, px, palette) => {
        ctx.lineJoin = 'round';
        for (const extent of props.extents) {
          traceExtent(ctx, extent, 5 * px);
          if (!props.faint) {
            ctx.strokeStyle = palette.copperHalo;
            ctx.lineWidth = 4 * px;
            ctx.stroke();
          }
          ctx.globalAlpha = props.faint ? 0.6 : 1;
          ctx.strokeStyle = palette.copper;
          ctx.lineWidth = (props.faint ? 1.2 : 1.75) * px;
          ctx.stroke();
        }
      }}
    />
  );
}

export function LitPlace(props: { readonly finding: Finding; readonly radiusMm: number; readonly strength: number }) {
  const { place, severity } = props.finding;
  return (
    <PlateShape
      paint={(ctx, px, palette) => {
        const colour = palette.pin[severity];
        ctx.beginPath();
        if (place.kind === 'point') ctx.arc(place.at.x, place.at.y, Math.max(place.radiusMm, 13 * px), 0, Math.PI * 2);
        else if (place.kind === 'ring') traceRing(ctx, place.ring);
        else if (place.kind === 'plate') ctx.arc(0, 0, props.radiusMm, 0, Math.PI * 2);
        else {
          ctx.arc(0, 0, place.outerMm, 0, Math.PI * 2);
          ctx.closePath();
          ctx.moveTo(place.innerMm, 0);
          ctx.arc(0, 0, place.innerMm, 0, Math.PI * 2);
          ctx.closePath();
        }
        if (place.kind !== 'plate') {
          ctx.globalAlpha = 0.22 * props.strength;
          ctx.fillStyle = colour;
          ctx.fill('evenodd');
        }
        ctx.globalAlpha = 0.55 + 0.45 * props.strength;
        ctx.strokeStyle = 'rgba(255, 255, 255, 0.85)';
        ctx.lineWidth = (4.5 + 2 * props.strength) * px;
        ctx.stroke();
        ctx.strokeStyle = colour;
        ctx.lineWidth = (2 + props.strength) * px;
        ctx.stroke();
      }}
    />
  );
}
