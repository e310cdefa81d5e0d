import { beforeAll, describe, expect, it } from 'vitest';
import { readFileSync } from 'node:fs';
import { loadFaces } from '../../fonts/node-faces.ts';
import { readDesign } from '../../geometry/design/read-design.ts';
import type { Design } from '../../geometry/design/schema.ts';
import { makePlate } from '../../geometry/pipeline/make-plate.ts';
import { createStore } from '../../geometry/pipeline/solve-store.ts';
import { sayWhereItHolds } from '../../geometry/pipeline/where-it-holds.ts';
import type { PlateResult } from '../../geometry/plate/plate.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';

const LONG = 'BERNARDO & ÍRIS SIMÕES-ROCHA, 1931 TO 2027';
const store = createStore();

/** The jubilee beginning with one line far too long, on a small plate. */
async function refused(diameter: Design['plates'][number]['diameter']) {
  const read = readDesign(readFileSync(new URL('../../web/demo/jubilee.json', import.meta.url), 'utf8'));
  if ('problem' in read) throw new Error(read.problem);
  const [plate] = read.design.plates;
  const design: Design = {
    ...read.design,
    plates: [{ ...plate!, diameter }],
    elements: read.design.elements.map((e) => (e.id === 'word' && 'text' in e ? { ...e, text: LONG } : e)),
  };
  const { faces } = await loadFaces(design);
  const make = (tried: Design): PlateResult => makePlate(tried, plate!.id, faces, store, BUILT_IN);
  return { design, make, told: sayWhereItHolds(design, make(design), make) };
}

const stops = (plate: PlateResult): number =>
  plate.findings.filter((f) => f.severity === 'stop' && f.elementIds.includes('word')).length;

describe('a text that can’t be cut is told where it can', () => {
  let small: Awaited<ReturnType<typeof refused>>;
  beforeAll(async () => {
    small = await refused({ share: 0.5 });
  }, 300_000);

  it('names a number of characters that really holds', () => {
    expect(stops(small.told)).toBeGreaterThan(0);
    const said = small.told.findings.find((f) => f.code === 'holds-at')!;
    const count = Number(/at most (\d+)/u.exec(said.sentence)?.[1]);
    expect(count).toBeGreaterThan(3);
    expect(count).toBeLessThan(LONG.length);
    const text = Array.from(LONG).slice(0, count).join('').trimEnd();
    const elements = small.design.elements.map((e) => (e.id === 'word' ? { ...e, text } : e)) as Design['elements'];
    expect(stops(small.make({ ...small.design, elements }))).toBe(0);
  });

  it('offers a plate on which the whole text really holds', () => {
    const change = small.told.findings.find((f) => f.code === 'holds-at')?.mend?.change;
    if (change?.kind !== 'set-plate-diameter') throw new Error('no size offered');
    const plates = small.design.plates.map((p) => ({ ...p, diameter: change.diameter }));
    expect(stops(small.make({ ...small.design, plates }))).toBe(0);
  });

  it('says nothing of a plate that can be cut', async () => {
    const plate = (await refused('fit')).make({ ...small.design, elements: [] });
    expect(sayWhereItHolds(small.design, plate, () => plate)).toBe(plate);
  });
});
