import { describe, expect, it } from 'vitest';
import { loadFaces } from '../../fonts/node-faces.ts';
import type { Design } from '../../geometry/design/schema.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { DEMOS } from '../approval/demos.ts';
import { readAddress, writeAddress } from './address.ts';
import { CASE_NAMES, designOfCase, letterName } from './cases.ts';
import { LAYERS, type LayerId } from './layer.ts';
import { layersOf, type Looked } from './layers-of.ts';

const demos = new Map(DEMOS.map(([name, design]) => [name.replace('.json', ''), design]));

async function looked(design: Design): Promise<Looked> {
  const { faces, problems } = await loadFaces(design);
  expect(problems).toEqual([]);
  return layersOf(design, design.plates[0]!.id, faces, BUILT_IN);
}

function designNamed(name: string): Design {
  const found = designOfCase(name, demos);
  if ('problem' in found) throw new Error(found.problem);
  return found.design;
}

const count = ({ layers }: Looked, id: LayerId) => layers.find((one) => one.id === id)!.count;

describe('the layers of a case', () => {
  it.each([...demos])('%s has every stage, with as much in it as the plate says', async (_, design) => {
    const made = await looked(design);
    expect(made.problems).toEqual([]);
    expect(made.layers.map((one) => one.id)).toEqual(LAYERS.map((one) => one.id));
    const { measures, findings, layout } = made.plate;
    expect(count(made, 'openings')).toBe(measures.openings);
    expect(count(made, 'bridges')).toBe(measures.bridges);
    expect(count(made, 'islands')).toBe(measures.islands);
    expect(count(made, 'layout')).toBe(layout.shapes.length);
    expect(count(made, 'findings')).toBe(findings.length);
    // Every bridge was one of the bars thought of, and the rim is one cut more than the openings.
    expect(count(made, 'bars')).toBeGreaterThanOrEqual(measures.bridges);
    expect(count(made, 'plan')).toBe(measures.openings + 1);
    expect(count(made, 'leads')).toBe(count(made, 'cut'));
    const marks = made.layers.flatMap((one) => one.marks);
    expect(marks.filter((mark) => 'path' in mark && /NaN|Infinity|undefined/.test(mark.path))).toEqual([]);
    expect(marks.filter((mark) => mark.says === '')).toEqual([]);
  });

  it('bars lie where bridges are: each bridge has a bar along its middle line', async () => {
    const made = await looked(designNamed('letter:cinzel-700/B/60'));
    const bars = made.layers
      .find(({ id }) => id === 'bars')!
      .marks.map((mark) => ends('path' in mark ? mark.path : ''));
    expect(made.plate.bridges.length).toBeGreaterThan(1);
    for (const { from, to } of made.plate.bridges) {
      const there = [from.x, -from.y, to.x, -to.y];
      const off = bars.map((bar) => Math.min(apart(bar, there), apart([...bar.slice(2), ...bar.slice(0, 2)], there)));
      expect(Math.min(...off)).toBeLessThan(0.01);
    }
  });

  it('a stock without speeds has no sheet plan, and says so', async () => {
    const design = designNamed('motif:star');
    const made = await looked({ ...design, stock: { ...design.stock, process: 'chisel' } });
    expect(made.problems).toHaveLength(1);
    expect(count(made, 'cut')).toBe(0);
    expect(count(made, 'openings')).toBeGreaterThan(0);
  });
});

describe('the name of a case', () => {
  it.each(CASE_NAMES.map(({ form }) => form))('%s is made', async (form) => {
    expect(count(await looked(designNamed(form)), 'openings')).toBeGreaterThan(0);
  });

  it('a letter is as high as its name says, and its name can be made from its parts', () => {
    const stock = { material: 'birch-plywood', thicknessMm: 3, process: 'co2-laser', use: 'paint' } as const;
    const design = designNamed(letterName('cinzel-700', '/', 25, stock, 'band'));
    const [letter] = design.elements;
    const [plate] = design.plates;
    if (letter?.kind !== 'lineText' || typeof plate?.diameter !== 'object' || !('mm' in plate.diameter))
      throw new Error();
    expect(letter.text).toBe('/');
    expect((letter.capHeight * plate.diameter.mm) / 2).toBeCloseTo(25, 9);
    expect(design.stock).toEqual(stock);
    expect(design.bridges.manner).toBe('band');
  });

  it.each(['nothing', 'seed:x', 'letter:cinzel-700', 'letter:no-face/A/25', 'motif:unicorn', 'motif:bee/9000'])(
    '%s is refused with a sentence',
    (name) => {
      expect(designOfCase(name, demos)).toHaveProperty('problem', expect.stringMatching(/\.$/));
    },
  );
});

describe('an address', () => {
  it('says the same when read again', () => {
    const at = {
      case: 'letter:cinzel-700/&/25',
      plate: 'half',
      layers: ['bridges', 'cut'] as const,
      zoom: { x: -12.5, y: 40, widthMm: 30 },
      finding: 2,
    };
    expect(readAddress(writeAddress(at))).toEqual(at);
    expect(readAddress('?case=seed:42&layers=&zoom=1,2')).toEqual({ case: 'seed:42', plate: '', layers: [] });
  });
});

function ends(path: string): number[] {
  return (path.match(/-?[\d.]+/g) ?? []).map(Number);
}

function apart(a: readonly number[], b: readonly number[]): number {
  return Math.max(...a.map((v, i) => Math.abs(v - b[i]!)));
}
