import { describe, expect, it } from 'vitest';
import { judgeDrawing } from './case.ts';
import { type Drawing, joinedWords, nestedDrawings } from './drawings.ts';

/** A few here; `npm run figures -- bridges` judges more. */
const DRAWINGS = 6;
const SEED = 404;

function failingInSilence(drawings: readonly Drawing[]): { silent: string[]; held: number } {
  const silent: string[] = [];
  let held = 0;
  for (const { name, drawn, stock, manner } of drawings) {
    const { outcome, fault } = judgeDrawing(drawn, stock, manner);
    if (outcome === 'silent') silent.push(`${name}: ${fault?.why ?? ''}`);
    if (outcome === 'held') held++;
  }
  return { silent, held };
}

describe('drawings of many parts, judged by JTS', () => {
  it('words whose letters run into each other hold, or it is told why not', async () => {
    const { silent, held } = failingInSilence(await joinedWords(DRAWINGS, SEED));
    expect(silent).toEqual([]);
    expect(held).toBeGreaterThan(DRAWINGS / 2);
  });

  it('frames in frames with a letter inside hold, or it is told why not', async () => {
    const drawings = await nestedDrawings(DRAWINGS, SEED);
    // Three levels of metal: each frame is an opening around an island.
    for (const { drawn } of drawings) expect(drawn.filter((r) => r.holes.length > 0).length).toBeGreaterThan(1);
    const { silent, held } = failingInSilence(drawings);
    expect(silent).toEqual([]);
    expect(held).toBeGreaterThan(DRAWINGS / 2);
  });
});
