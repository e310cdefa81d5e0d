import { FACES, type FaceEntry } from '../../../fonts/catalogue.ts';
import { loadFace } from '../../../fonts/node-faces.ts';
import type { Face } from '../../../geometry/adapters/face.ts';
import { flattenOutline } from '../../../geometry/measure/flatten.ts';
import { joinBoxes, ringBox } from '../../../geometry/measure/ring.ts';
import type { Ring } from '../../../geometry/shapes.ts';
import { FLATTEN_ERROR_MM } from '../../../geometry/units.ts';

export const LETTERS = Array.from('ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789&');

/** Of a letter on a plate. */
const EM_MM = 50;
const BAR_MM = 2.4;

/** Every face that ships, with its record. */
export async function corpusFaces(): Promise<readonly { readonly entry: FaceEntry; readonly face: Face }[]> {
  return Promise.all(
    FACES.map(async (entry) => {
      const loaded = await loadFace(entry.id);
      if ('problem' in loaded) throw new Error(loaded.problem);
      return { entry, face: loaded.face };
    }),
  );
}

/** Outlines of all letters of all faces in mm, not yet united, and an upright bar through each. */
export async function corpusRings(): Promise<readonly { readonly rings: readonly Ring[]; readonly bar: Ring }[]> {
  const faces = await corpusFaces();
  return faces.flatMap(({ face }) =>
    LETTERS.flatMap((char) => {
      const outline = face.glyph(char)?.outline ?? [];
      const rings = flattenOutline(outline, FLATTEN_ERROR_MM / EM_MM).map((ring) =>
        ring.map((p) => ({ x: p.x * EM_MM, y: p.y * EM_MM })),
      );
      if (rings.length === 0) return [];
      const box = joinBoxes(rings.map(ringBox));
      const [left, right] = [(box.minX + box.maxX - BAR_MM) / 2, (box.minX + box.maxX + BAR_MM) / 2];
      const corners: [number, number][] = [[left, box.minY - 1], [right, box.minY - 1], [right, box.maxY + 1], [left, box.maxY + 1]]; // prettier-ignore
      return [{ rings, bar: corners.map(([x, y]) => ({ x, y })) }];
    }),
  );
}
