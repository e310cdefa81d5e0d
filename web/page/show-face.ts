import { createCache } from '../../geometry/cache.ts';
import { bytesOfBase64, contentKey } from '../../geometry/design/own-face-id.ts';
import { faceEntry } from '../../fonts/catalogue.ts';

/** More faces than a design may hold and the catalogue has. */
const SHOWN = createCache<Promise<string | undefined>>(200);

/**
 * Makes a face known to the browser and gives the family name to write with; undefined when it cannot be had.
 * source is the id of a catalogue face, or the base64 data of a font of one's own.
 */
export function showFace(id: string, source: string): Promise<string | undefined> {
  const key = entryKey(id, source);
  return SHOWN.getOrMake(key, () => {
    const coming = load(id, source);
    void coming.then((family) => {
      if (family === undefined) SHOWN.delete(key);
    });
    return coming;
  });
}

/** A font of one's own by its data. */
function entryKey(id: string, source: string): string {
  return source === id ? id : contentKey({ id, data: source });
}

/** Latin letters beyond Latin-1, as in fonts/further-letters.ts. */
const FURTHER = 'U+100-2FF,U+1E00-1EFF';

/** Families written with so far: each has a name of its own. */
let families = 0;

async function load(id: string, source: string): Promise<string | undefined> {
  const family = `sample-${++families}-${id.replace(/[^a-z0-9]/gi, '-')}`;
  const entry = faceEntry(id);
  try {
    // the font reader that hangs on these two is large, and needed only once somebody chooses a face
    const { faceUrl } = await import('../../fonts/browser-faces.ts');
    const { furtherUrl } = await import('../../fonts/browser-further.ts');
    const url = entry === undefined ? undefined : faceUrl(entry);
    const data = url === undefined ? bytesOfBase64(source)?.slice().buffer : `url("${url}")`;
    if (data === undefined) return undefined;
    const face = new FontFace(family, data);
    await face.load();
    document.fonts.add(face);
    const further = entry && furtherUrl(entry);
    // its file comes when a sample is written with such a letter
    if (further !== undefined) document.fonts.add(new FontFace(family, `url("${further}")`, { unicodeRange: FURTHER }));
    return `'${family}'`;
  } catch {
    return undefined;
  }
}
