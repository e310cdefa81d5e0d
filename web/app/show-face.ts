import { faceUrl } from '../../fonts/browser-faces.ts';
import { faceEntry } from '../../fonts/catalogue.ts';
import { bytesOfBase64 } from '../../fonts/load-faces.ts';

const shown = new Map<string, Promise<string | undefined>>();

/**
 * Makes a face known to the browser and gives the family name to write with; undefined when it cannot be had.
 * source is the id of a catalogue face, or the base64 data of a font of one's own.
 */
export function showFace(id: string, source: string): Promise<string | undefined> {
  const known = shown.get(id);
  if (known !== undefined) return known;
  const coming = load(id, source);
  shown.set(id, coming);
  void coming.then((family) => {
    if (family === undefined) shown.delete(id);
  });
  return coming;
}

async function load(id: string, source: string): Promise<string | undefined> {
  const family = `sample-${id.replace(/[^a-z0-9]/gi, '-')}`;
  const entry = faceEntry(id);
  const url = entry === undefined ? undefined : faceUrl(entry);
  const data = url === undefined ? bytesOfBase64(source)?.slice().buffer : `url("${url}")`;
  if (data === undefined) return undefined;
  try {
    const face = new FontFace(family, data);
    await face.load();
    document.fonts.add(face);
    return `'${family}'`;
  } catch {
    return undefined;
  }
}
