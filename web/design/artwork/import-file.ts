import type { Grey } from '../../../geometry/artwork/grey.ts';
import { fileKind } from './picture-kind.ts';
import { MOST_PICTURE_BYTES, readPicture } from './read-picture.ts';
import { readSvg, type SvgDrawing } from './read-svg.ts';
import type { Refusal } from './svg-text.ts';

/** What a chosen file came to. */
export type Imported =
  | { readonly kind: 'svg'; readonly drawing: SvgDrawing }
  | { readonly kind: 'picture'; readonly grey: Grey }
  | { readonly refused: Refusal };

/** Reads a file that a person chose or dropped: an SVG drawing or a picture, by what is in it. */
export async function importFile(file: File): Promise<Imported> {
  if (file.size === 0) return { refused: 'empty' };
  if (file.size > MOST_PICTURE_BYTES) return { refused: 'tooLarge' };
  let bytes: Uint8Array;
  try {
    bytes = new Uint8Array(await file.arrayBuffer());
  } catch {
    return { refused: 'empty' };
  }
  switch (fileKind(bytes)) {
    case 'svg': {
      const drawing = readSvg(bytes, window);
      return 'refused' in drawing ? drawing : { kind: 'svg', drawing };
    }
    case 'picture': {
      const grey = await readPicture(file, bytes);
      return 'refused' in grey ? grey : { kind: 'picture', grey };
    }
    case 'unknown':
      return { refused: 'unknownKind' };
  }
}
