import { compose } from '../../../geometry/artwork/compose.ts';
import artwork from '../../../web/words/en/work/artwork.json';
import { importFile } from '../../../web/design/artwork/import-file.ts';
import { readText } from '../../web/artwork/node-window.ts';
import { PICTURE_CASES } from '../../hostile/picture-cases.ts';
import { FILE_CASES, FONT_CASES, LINK_CASES } from '../../hostile/document-cases.ts';
import { SVG_CASES } from '../../hostile/svg-cases.ts';
import type { Claim } from '../claim.ts';

const SENTENCES: Readonly<Record<string, string>> = artwork.refused;

/** Hostile drawings and pictures, each read now: a sentence or a clean import. That nothing is asked or run, journeys watch. */
export const HOSTILE_CLAIMS: readonly Claim[] = [
  {
    name: 'hostile-svg-cases-that-end-well',
    wanted: 'all, at least 20',
    measure() {
      const well = SVG_CASES.filter((c) => {
        const read = readText(c.file);
        if ('refused' in read) return read.refused === c.ends && (SENTENCES[read.refused] ?? '').endsWith('.');
        const made = compose(read.shapes, 'dark');
        return c.ends === 'clean' && !('trouble' in made) && made.openings === 1 && /^[MLQCZ0-9., -]+$/.test(made.path);
      }).length;
      return Promise.resolve(counted(well, SVG_CASES.length, 20));
    },
  },
  {
    name: 'hostile-picture-cases-that-end-well',
    wanted: 'all, at least 8',
    async measure() {
      let well = 0;
      for (const c of PICTURE_CASES) {
        const read = await importFile(new File([c.bytes.slice()], 'picture.png'));
        // Without a browser's decoder a sound header ends as a picture that can't be read.
        if ('refused' in read && read.refused === (c.ends === 'decode' ? 'noPicture' : c.ends)) well++;
      }
      return counted(well, PICTURE_CASES.length, 8);
    },
  },
  ...(
    [
      ['design-file', FILE_CASES, 15],
      ['link', LINK_CASES, 10],
      ['font', FONT_CASES, 8],
    ] as const
  ).map(([kind, cases, least]) => ({
    name: `hostile-${kind}-cases-that-end-well`,
    wanted: `all, at least ${least}`,
    measure() {
      const well = cases.filter((c) => {
        const sentence = c.read();
        return c.says === undefined ? sentence === undefined : c.says.test(sentence ?? '');
      }).length;
      return Promise.resolve(counted(well, cases.length, least));
    },
  })),
];

function counted(well: number, all: number, least: number) {
  return { value: `${well} of ${all}`, unit: 'cases', ok: well === all && all >= least };
}
