import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { loadFaces } from '../../fonts/node-faces.ts';
import { createStore } from '../../geometry/pipeline/solve-store.ts';
import { readDesign } from '../../geometry/design/read-design.ts';
import { designText } from '../../geometry/design/write-design.ts';
import { makePlate } from '../../geometry/pipeline/make-plate.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';

const FOLDER = fileURLToPath(new URL('../../web/demo/', import.meta.url));
const FILES = readdirSync(FOLDER).filter((name) => name.endsWith('.json'));

describe('the demo designs', () => {
  it('are seven or more', () => {
    expect(FILES.length).toBeGreaterThanOrEqual(7);
  });

  it.each(FILES)('%s is written as the tool writes it, and ready to cut at every size', async (name) => {
    const text = readFileSync(FOLDER + name, 'utf8');
    const read = readDesign(text);
    if ('problem' in read) throw new Error(read.problem);
    expect(text).toBe(designText(read.design));
    const { faces, problems } = await loadFaces(read.design);
    expect(problems).toEqual([]);
    expect(read.design.plates.map((p) => p.id)).toEqual(['large', 'half']);
    for (const { id } of read.design.plates) {
      const plate = makePlate(read.design, id, faces, createStore(), BUILT_IN);
      expect(plate.findings.filter((f) => f.severity !== 'note')).toEqual([]);
      expect(plate.verdict).toBe('ready');
      expect(plate.openings.length).toBeGreaterThan(20);
    }
  });
});
