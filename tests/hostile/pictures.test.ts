import { describe, expect, test } from 'vitest';
import { importFile } from '../../web/design/artwork/import-file.ts';
import { fileKind, pictureSize } from '../../web/design/artwork/picture-kind.ts';
import { refusePicture } from '../../web/design/artwork/read-picture.ts';
import artwork from '../../web/words/en/work/artwork.json';
import { PICTURE_CASES } from './picture-cases.ts';

describe.each(PICTURE_CASES.map((c) => [c.name, c] as const))('%s', (_, c) => {
  test(`ends as ${c.ends} (${c.source})`, async () => {
    if (c.ends === 'decode') {
      // The header is fine: a browser's decoder is asked, which the journey does. Without one, it is no picture.
      expect(refusePicture(c.bytes)).toBeUndefined();
      await expect(importFile(new File([c.bytes.slice()], 'picture.png'))).resolves.toEqual({ refused: 'noPicture' });
      return;
    }
    const read = await importFile(new File([c.bytes.slice()], 'picture.png'));
    expect(read).toEqual({ refused: c.ends });
    expect(artwork.refused[c.ends as keyof typeof artwork.refused].length).toBeGreaterThan(30);
  });
});

test('headers of sound pictures say their size', () => {
  const png = PICTURE_CASES.find((c) => c.ends === 'decode')!.bytes;
  expect(fileKind(png)).toBe('picture');
  expect(pictureSize(png)).toEqual({ width: 20, height: 20 });
});

test('there are at least eight cases, each with its source', () => {
  expect(PICTURE_CASES.length).toBeGreaterThanOrEqual(8);
  expect(PICTURE_CASES.every((c) => c.source.length > 3)).toBe(true);
});
