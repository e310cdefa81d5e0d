import { describe, expect, test } from 'vitest';
import { flattenOutline } from '../../../geometry/measure/flatten.ts';
import { outlineBox } from '../../../geometry/measure/outline-box.ts';
import { readPathData } from '../../../geometry/measure/path-data.ts';
import { LONGEST_PATH } from '../../../geometry/design/limits.ts';
import { importText, readText, svg } from './node-window.ts';

/** Area of the imported drawing, in the units of the file: what Pythagoras and Archimedes give is beside it. */
function areaOf(text: string, cut: 'dark' | 'light' = 'dark'): number {
  const done = importText(text, cut);
  if ('trouble' in done) throw new Error(done.trouble);
  const read = readPathData(done.path);
  if ('problem' in read) throw new Error(read.problem.english);
  const sum = flattenOutline(read.outline, 1e-6).reduce(
    (s, ring) =>
      s +
      ring.reduce(
        (a, p, i) => a + (p.x * ring[(i + 1) % ring.length]!.y - ring[(i + 1) % ring.length]!.x * p.y) / 2,
        0,
      ),
    0,
  );
  return sum * done.height * done.height;
}

describe('shapes of SVG 2, chapter 10, have the area school geometry gives them', () => {
  test.each([
    ['rect', '<rect x="10" y="10" width="40" height="20"/>', 800],
    ['rounded rect', '<rect x="10" y="10" width="40" height="20" rx="5"/>', 800 - (4 - Math.PI) * 25],
    ['rect, ry alone', '<rect width="40" height="20" ry="10"/>', 800 - (4 - Math.PI) * 100],
    ['circle', '<circle cx="50" cy="50" r="30"/>', Math.PI * 900],
    ['ellipse', '<ellipse cx="50" cy="50" rx="30" ry="10"/>', Math.PI * 300],
    ['polygon', '<polygon points="0,0 30,0 0,40"/>', 600],
    ['polyline is filled as if closed', '<polyline points="0 0 30 0 0 40"/>', 600],
    ['relative path', '<path d="m10 10h20v20h-20z"/>', 400],
    ['path going on after Z', '<path d="M10 10h20v20h-20z l-10 0 0 -10z"/>', 450],
    ['arcs', '<path d="M20 50a30 30 0 0 1 60 0a30 30 0 0 1 -60 0z"/>', Math.PI * 900],
    ['smooth curves', '<path d="M10 10C10 20 30 20 30 10S50 0 50 10V40H10Z"/>', 1200],
    ['transforms in order', '<g transform="translate(10 10) scale(2)"><rect width="10" height="10"/></g>', 400],
    ['rotate about a point', '<rect width="20" height="10" transform="rotate(30 50 50)"/>', 200],
    ['even-odd', '<path fill-rule="evenodd" d="M0 0h40v40h-40zM10 10h20v20h-20z"/>', 1200],
    ['non-zero, same way round', '<path d="M0 0h40v40h-40zM10 10h20v20h-20z"/>', 1600],
    ['non-zero, other way round', '<path d="M0 0h40v40h-40zM10 10v20h20v-20z"/>', 1200],
    ['stroke of a line, butt', '<path d="M10 50H60" stroke="#000" stroke-width="4"/>', 200],
    ['stroke of a line, square', '<path d="M10 50H60" stroke="#000" stroke-width="4" stroke-linecap="square"/>', 216],
    [
      'stroke, round',
      '<path d="M10 50H60" style="stroke:#000;stroke-width:4;stroke-linecap:round"/>',
      200 + 4 * Math.PI,
    ],
    [
      'ring of a stroked circle',
      '<circle cx="50" cy="50" r="30" fill="none" stroke="#111" stroke-width="4"/>',
      240 * Math.PI,
    ],
    [
      'mitre',
      '<rect x="20" y="20" width="40" height="40" fill="none" stroke="#000" stroke-width="4"/>',
      44 * 44 - 36 * 36,
    ],
    [
      'stroke squeezed by its transform',
      '<path transform="scale(1 3)" d="M10 5H60" stroke="#000" stroke-width="4"/>',
      600,
    ],
    [
      'use of a symbol',
      '<defs><rect id="a" width="10" height="10"/></defs><use href="#a" x="20"/><use xlink:href="#a" y="20"/>',
      200,
    ],
    [
      'symbol with a view box',
      '<symbol id="a" viewBox="0 0 10 10"><rect width="10" height="10"/></symbol><use href="#a" width="20" height="20"/>',
      400,
    ],
    [
      'inner svg',
      '<svg x="10" y="10" width="50" height="50" viewBox="0 0 10 10"><rect width="2" height="2"/></svg>',
      100,
    ],
    ['display none', '<rect width="10" height="10"/><rect x="50" width="10" height="10" display="none"/>', 100],
    [
      'class in a style element',
      '<style>.a,.b{fill:none}#c{fill:#000}</style><rect class="a" width="50" height="50"/><rect id="c" class="a" width="10" height="10"/>',
      100,
    ],
    [
      'inherited',
      '<g fill="none" stroke="none"><rect width="50" height="50"/><rect width="10" height="10" fill="black"/></g>',
      100,
    ],
    ['overlapping', '<rect width="20" height="20"/><rect x="10" width="20" height="20"/>', 600],
    [
      'light over dark',
      '<rect width="40" height="40"/><circle cx="20" cy="20" r="10" fill="#fff"/>',
      1600 - 100 * Math.PI,
    ],
  ])('%s', (_, inside, mm2) => {
    expect(areaOf(svg(inside)) / mm2).toBeCloseTo(1, 3);
  });

  test('light is cut, if asked', () => {
    expect(
      areaOf(svg('<rect width="40" height="40"/><circle cx="20" cy="20" r="10" fill="#fff"/>'), 'light'),
    ).toBeCloseTo(100 * Math.PI, 0);
  });
});

test('units are CSS units at 96 to the inch (CSS Values 4, 6.2)', () => {
  const height = (text: string): number => {
    const done = importText(text);
    if ('trouble' in done) throw new Error(done.trouble);
    return done.height;
  };
  const bar = (h: string): string => svg(`<rect width="10" height="${h}"/>`, 'width="1000" height="1000"');
  expect(height(bar('1in'))).toBeCloseTo(96, 3);
  expect(height(bar('25.4mm'))).toBeCloseTo(96, 3);
  expect(height(bar('72pt'))).toBeCloseTo(96, 3);
  expect(height(bar('6pc'))).toBeCloseTo(96, 3);
  expect(height(bar('2.54cm'))).toBeCloseTo(96, 3);
  // A view box of 10 across 100 mm: one unit is 10 mm.
  const drawing = readText(svg('<rect width="10" height="10"/>', 'width="100mm" height="100mm" viewBox="0 0 10 10"'));
  expect(drawing).toMatchObject({ mmPerUnit: 25.4 / 96 });
  expect(
    height(svg('<rect width="10" height="10"/>', 'width="100mm" height="100mm" viewBox="0 0 10 10"')) * (25.4 / 96),
  ).toBeCloseTo(100, 3);
});

test('the path is what a design carries: 1 high about its middle, curves kept where nothing overlaps', () => {
  const done = importText(svg('<circle cx="30" cy="70" r="20"/><rect x="60" y="10" width="30" height="20"/>'));
  if ('trouble' in done) throw new Error(done.trouble);
  expect(done.path.length).toBeLessThan(LONGEST_PATH);
  expect(done.path.match(/C/g)).toHaveLength(4);
  const read = readPathData(done.path);
  const box = outlineBox('outline' in read ? read.outline : [])!;
  expect(box.maxY).toBeCloseTo(0.5, 4);
  expect(box.minY).toBeCloseTo(-0.5, 4);
  expect(box.maxX).toBeCloseTo(-box.minX, 4);
  expect(box.maxX - box.minX).toBeCloseTo(done.width, 4);
  expect(done.openings).toBe(2);
});

test('up in the file is up on the plate', () => {
  const done = importText(svg('<path d="M0 100 L50 0 L100 100Z"/>'));
  if ('trouble' in done) throw new Error(done.trouble);
  expect(done.path).toContain('0 0.5');
  expect(done.path).not.toMatch(/[ML]0 -0\.5/);
});

test('smooth curves where shapes overlap: few commands, not hundreds of points', () => {
  const done = importText(svg('<circle cx="40" cy="50" r="30"/><circle cx="60" cy="50" r="30"/>'));
  if ('trouble' in done) throw new Error(done.trouble);
  expect(done.path.match(/[CL]/g)!.length).toBeLessThan(30);
});
