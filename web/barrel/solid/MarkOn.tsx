import { useThree } from '@react-three/fiber';
import { useLayoutEffect, useMemo } from 'react';
import { CanvasTexture, SRGBColorSpace } from 'three';
import type { Surface } from '../../../geometry/barrel/surface.ts';
import type { PlateResult } from '../../../geometry/plate/plate.ts';
import type { Theme } from '../painting/oak.ts';
import { blankCanvas, type OakTexture } from '../painting/textures.ts';
import { litMaterial } from './lit-material.ts';
import { BESIDE_MM, drawMark } from './mark-canvas.ts';
import { patchMesh } from './patch-mesh.ts';
import { toGeometry } from './to-geometry.ts';
import { useOwn } from './use-own.ts';

/** About a quarter of a millimetre on a usual head. */
const MARK_PX = 2048;

interface MarkOnProps {
  readonly plate: PlateResult;
  readonly surface: Surface;
  readonly kind: 'paint' | 'char';
  readonly paint: string;
  readonly theme: Theme;
  readonly oak: OakTexture;
  readonly woodHalfMm: number;
}

/** What the plate leaves on the wood: one canvas, drawn again when the openings change. */
export function MarkOn({ plate, surface, kind, paint, theme, oak, woodHalfMm }: MarkOnProps) {
  const invalidate = useThree((s) => s.invalidate);
  const most = useThree((s) => s.gl.capabilities.getMaxAnisotropy());
  const canvas = useMemo(() => blankCanvas(MARK_PX, MARK_PX), []);
  const texture = useOwn(() => {
    const made = new CanvasTexture(canvas);
    made.colorSpace = SRGBColorSpace;
    made.anisotropy = Math.min(8, most);
    return made;
  }, [canvas, most]);
  const radiusMm = plate.diameterMm / 2;
  const geometry = useOwn(() => toGeometry(patchMesh(surface, radiusMm + BESIDE_MM)), [surface, radiusMm]);
  const { openings } = plate;
  useLayoutEffect(() => {
    drawMark(canvas, { kind, paint, openings: openings.map((o) => o.region), radiusMm, surface, oak, woodHalfMm });
    // eslint-disable-next-line react-hooks/immutability -- a handle on what the card holds, no state of React
    texture.needsUpdate = true;
    invalidate();
  }, [canvas, texture, invalidate, kind, paint, openings, radiusMm, surface, oak, woodHalfMm]);
  const marked = useOwn(() => {
    const made = litMaterial({ map: texture, color: '#fff', theme });
    Object.assign(made, MARK_LIES);
    return made;
  }, [texture, theme]);
  return <mesh geometry={geometry} material={marked} receiveShadow renderOrder={1} />;
}

/** On the very wood: drawn over it, never hidden by it. */
const MARK_LIES = {
  transparent: true,
  depthWrite: false,
  polygonOffset: true,
  polygonOffsetFactor: -2,
  polygonOffsetUnits: -2,
};
