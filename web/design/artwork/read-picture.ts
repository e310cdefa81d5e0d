import type { Grey } from '../../../geometry/artwork/grey.ts';
import { greyOf } from './grey.ts';
import { pictureSize } from './picture-kind.ts';
import type { Refusal } from './svg-text.ts';

export const MOST_PICTURE_BYTES = 30_000_000;
/** A hundred megapixels unpack to 400 MB: more than a phone has to spare. */
const MOST_PIXELS = 100_000_000;
/** Longest side that is traced: finer detail than any plate shows. */
const LONGEST_SIDE = 1600;

/** Whether a picture may be unpacked, by its size and header alone. */
export function refusePicture(bytes: Uint8Array): Refusal | undefined {
  if (bytes.length > MOST_PICTURE_BYTES) return 'tooLarge';
  const size = pictureSize(bytes);
  if (!size) return 'noPicture';
  return size.width * size.height > MOST_PIXELS ? 'pictureTooLarge' : undefined;
}

/** A picture's greys, by the browser's own decoder, on white, scaled down to LONGEST_SIDE. */
export async function readPicture(file: Blob, bytes: Uint8Array): Promise<Grey | { readonly refused: Refusal }> {
  const refused = refusePicture(bytes);
  if (refused) return { refused };
  let bitmap: ImageBitmap;
  try {
    bitmap = await createImageBitmap(file);
  } catch {
    return { refused: 'noPicture' };
  }
  const by = Math.min(1, LONGEST_SIDE / Math.max(bitmap.width, bitmap.height));
  const [width, height] = [Math.max(1, Math.round(bitmap.width * by)), Math.max(1, Math.round(bitmap.height * by))];
  const canvas = document.createElement('canvas');
  [canvas.width, canvas.height] = [width, height];
  const pen = canvas.getContext('2d', { willReadFrequently: true });
  if (!pen) return { refused: 'noPicture' };
  pen.imageSmoothingQuality = 'high';
  pen.drawImage(bitmap, 0, 0, width, height);
  bitmap.close();
  return { width, height, values: greyOf(pen.getImageData(0, 0, width, height).data) };
}
