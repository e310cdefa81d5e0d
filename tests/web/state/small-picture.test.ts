import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { loadFaces } from '../../../fonts/node-faces.ts';
import { readDesign } from '../../../geometry/design/read-design.ts';
import { makePlate } from '../../../geometry/pipeline/make-plate.ts';
import { createStore } from '../../../geometry/pipeline/solve-store.ts';
import { BUILT_IN } from '../../../geometry/stock/built-in-stock.ts';
import { cardOf } from '../../../web/state/card.ts';
import { smallPicture } from '../../../web/state/own/small-picture.ts';

const FOLDER = new URL('../../../web/demo/', import.meta.url);

describe('the small picture of a design', () => {
  it.each(readdirSync(FOLDER))('shows every opening of %s, and is taken back from the store', async (name) => {
    const read = readDesign(readFileSync(new URL(name, FOLDER), 'utf8'));
    if ('problem' in read) throw new Error(read.problem);
    const { faces } = await loadFaces(read.design);
    const plate = makePlate(read.design, 'large', faces, createStore(), BUILT_IN);
    const picture = smallPicture(plate);
    const rings = plate.openings.reduce((n, o) => n + 1 + o.region.holes.length, 0);
    expect(picture.path.split('M').length - 1).toBe(rings);
    expect(picture.path.length).toBeLessThan(58_000);
    expect(cardOf({ title: 'x', changedMs: 1, revision: 1, picture }, 'x').picture).toEqual(picture);
  });
});
