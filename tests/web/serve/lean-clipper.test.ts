import ClipperLib from 'clipper-lib';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { expect, it } from 'vitest';
import { leanClipperSource } from '../../../web/serve/lean-clipper.ts';
import { seeded } from '../../judge/seeded.ts';

const source = readFileSync(createRequire(import.meta.url).resolve('clipper-lib'), 'utf8');
const lean = load(leanClipperSource(source));

/** As Node would load it. */
function load(text: string): typeof ClipperLib {
  const module = { exports: {} };
  // eslint-disable-next-line @typescript-eslint/no-implied-eval, @typescript-eslint/no-unsafe-call -- the library's own text
  new Function('module', text)(module);
  return module.exports as typeof ClipperLib;
}

it('cuts, joins and grows the same without the large numbers it brought along', () => {
  const random = seeded(604);
  for (const size of [2_000, 900_000, 40_000_000]) {
    for (let i = 0; i < 60; i++) {
      const ring = (): { X: number; Y: number }[] =>
        Array.from({ length: 9 }, () => ({ X: random.whole(0, size), Y: random.whole(0, size) }));
      const [subject, clip] = [ring(), ring()];
      for (const type of [0, 1, 2, 3])
        expect(clipped(lean, subject, clip, type)).toEqual(clipped(ClipperLib, subject, clip, type));
      expect(grown(lean, subject, size / 50)).toEqual(grown(ClipperLib, subject, size / 50));
    }
  }
});

it('is exact where the library turns to large numbers', () => {
  // both slopes are 1 in 3 but for the last digit, which a double does not hold
  const far = 3_000_000_000;
  const point = (X: number, Y: number) => ({ X, Y });
  const { SlopesEqual } = (lean as unknown as { ClipperBase: Record<string, (...of: unknown[]) => boolean> })
    .ClipperBase;
  const like = (y: number): boolean =>
    SlopesEqual!(point(0, 0), point(3 * far, far), point(9 * far, 3 * far + y), true);
  expect([like(0), like(1)]).toEqual([true, false]);
});

it('refuses a library that is written otherwise', () => {
  expect(() => leanClipperSource(source.replace('// end of Int128 section', ''))).toThrow('no longer written');
  expect(() => leanClipperSource(`${source}\nInt128.op_Division(1, 2);`)).toThrow('no longer written');
});

type Ring = ClipperLib.Path;

function clipped(library: typeof ClipperLib, subject: Ring, clip: Ring, type: ClipperLib.ClipType): unknown {
  const clipper = new library.Clipper();
  clipper.AddPath(subject, library.PolyType.ptSubject, true);
  clipper.AddPath(clip, library.PolyType.ptClip, true);
  const out: Ring[] = [];
  clipper.Execute(type, out, library.PolyFillType.pftNonZero, library.PolyFillType.pftNonZero);
  return out;
}

function grown(library: typeof ClipperLib, ring: Ring, by: number): unknown {
  const grower = new library.ClipperOffset(2, 25);
  grower.AddPaths([ring], library.JoinType.jtRound, library.EndType.etClosedPolygon);
  const out: Ring[] = [];
  grower.Execute(out, by);
  return out;
}
