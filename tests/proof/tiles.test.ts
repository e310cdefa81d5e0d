import { describe, expect, it } from 'vitest';
import { PAPERS } from '../../geometry/files/paper/page-size.ts';
import { OVERLAP_MM, TILE_FRAME, layTiles } from '../../geometry/proof/tiles.ts';
import { writeProof } from '../../geometry/proof/write-proof.ts';
import { readAllPages } from '../readers/pdf-reader.ts';
import { asked, fonts, MM, plannedPlate } from './set-up.ts';

describe('pages at true size', () => {
  it.each([
    [60, 'a4'],
    [183, 'letter'],
    [258, 'a4'],
    [533.4, 'letter'],
    [1200, 'a4'],
  ] as const)('cover a plate of %d mm on %s, neighbours overlapping', (diameter, paper) => {
    const tiles = layTiles(diameter, PAPERS[paper]);
    const r = diameter / 2;
    for (let deg = 0; deg < 360; deg++) {
      for (const share of [0, 0.3, 0.7, 1]) {
        const rad = (deg * Math.PI) / 180;
        const [x, y] = [share * r * Math.cos(rad), share * r * Math.sin(rad)];
        const on = tiles.filter((t) => x >= t.left && x <= t.left + t.width && y >= t.top && y <= t.top + t.height);
        expect(on.length, `${deg} ${share}`).toBeGreaterThan(0);
      }
    }
    for (const a of tiles) {
      const right = tiles.find((b) => b.row === a.row && b.column === a.column + 1);
      if (right) expect(a.left + a.width - right.left).toBeCloseTo(OVERLAP_MM, 9);
      const below = tiles.find((b) => b.row === a.row + 1 && b.column === a.column);
      if (below) expect(a.top + a.height - below.top).toBeCloseTo(OVERLAP_MM, 9);
    }
    expect(new Set(tiles.map((t) => t.name)).size).toBe(tiles.length);
  });

  it.each([
    [533.4, 'a4'],
    [400, 'letter'],
    [1200, 'letter'],
    [120, 'a4'],
  ] as const)('put together give the true rim of %d mm on %s', async (diameter, paper) => {
    const bytes = await writeProof(asked({ plates: [plannedPlate(diameter)], page: paper, tiles: true }), fonts);
    const { pages } = await readAllPages(bytes);
    const tiles = layTiles(diameter, PAPERS[paper]);
    const numbered = pages.slice(-tiles.length);
    tiles.forEach((tile, i) => {
      const { boxes, texts, size } = numbered[i]!;
      expect(texts.map((t) => t.text)).toContain(tile.name);
      // The rim: the largest round path; where its middle lies in the whole, from where the page is laid.
      const round = boxes.filter((b) => Math.abs(b.maxX - b.minX - (b.maxY - b.minY)) < 1e-2);
      const rim = round.reduce((a, b) => (b.maxX - b.minX > a.maxX - a.minX ? b : a));
      expect(Math.abs((rim.maxX - rim.minX) / MM - diameter)).toBeLessThan(0.1);
      const middle = [(rim.minX + rim.maxX) / 2 / MM, (size[1] - (rim.minY + rim.maxY) / 2) / MM] as const;
      expect(Math.abs(middle[0] - TILE_FRAME.left + tile.left)).toBeLessThan(0.1);
      expect(Math.abs(middle[1] - TILE_FRAME.top + tile.top)).toBeLessThan(0.1);
    });
  });

  it('carry lines of 100 mm and 4 in, and a plan before them', async () => {
    const bytes = await writeProof(asked({ plates: [plannedPlate(400)], tiles: true }), fonts);
    const { pages } = await readAllPages(bytes);
    const tiles = layTiles(400, PAPERS.a4);
    expect(pages.at(-tiles.length - 1)!.texts.map((t) => t.text)).toContain('At true size: Large');
    for (const { boxes, texts } of pages.slice(-tiles.length)) {
      const lengths = boxes.filter((b) => b.maxY - b.minY < 0.01).map((b) => (b.maxX - b.minX) / MM);
      for (const length of [100, 101.6]) {
        expect(Math.min(...lengths.map((l) => Math.abs(l - length)))).toBeLessThan(0.05);
      }
      for (const label of ['100 mm', '4 in']) expect(texts.map((t) => t.text)).toContain(label);
    }
  });

  it('are only of the plates that are asked for', async () => {
    const plates = [plannedPlate(150, 'Large'), plannedPlate(100, 'Small')];
    const count = async (tilesOf: string[]) =>
      (await readAllPages(await writeProof(asked({ plates, tiles: true, tilesOf }), fonts))).pages.length;
    expect((await count(['large', 'small'])) - (await count(['small']))).toBe(1);
  });
});
