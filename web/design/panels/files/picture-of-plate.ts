import type { PlateResult } from '../../../../geometry/plate/plate.ts';
import { traceRegions } from '../../../barrel/painting/trace.ts';
import type { MadeFile } from '../../../worker/plate-api.ts';
import { fileStem } from '../../../worker/file-stem.ts';

const SIDE_PX = 900;
const MARGIN = 1.06;
const METAL = '#d5d6d3';
const OPEN = '#29241f';

/** The plate from in front as a small picture, for a message; undefined where the browser draws none. */
export async function pictureOfPlate(
  { diameterMm, openings }: PlateResult,
  title: string,
): Promise<MadeFile | undefined> {
  const canvas = document.createElement('canvas');
  canvas.width = canvas.height = SIDE_PX;
  const ctx = canvas.getContext('2d');
  if (!ctx) return undefined;
  ctx.fillStyle = '#ffffff';
  ctx.fillRect(0, 0, SIDE_PX, SIDE_PX);
  const scale = SIDE_PX / (diameterMm * MARGIN);
  // mm with y up
  ctx.setTransform(scale, 0, 0, -scale, SIDE_PX / 2, SIDE_PX / 2);
  ctx.beginPath();
  ctx.arc(0, 0, diameterMm / 2, 0, 2 * Math.PI);
  ctx.fillStyle = METAL;
  ctx.fill();
  const path = new Path2D();
  traceRegions(
    path,
    openings.map(({ region }) => region),
  );
  ctx.fillStyle = OPEN;
  ctx.fill(path, 'evenodd');
  const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/png'));
  if (!blob) return undefined;
  return { name: `${fileStem(title)}.png`, type: 'image/png', bytes: new Uint8Array(await blob.arrayBuffer()) };
}
