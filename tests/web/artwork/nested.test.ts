import { expect, test } from 'vitest';
import { motifById } from '../../../geometry/motifs/catalogue.ts';
import { emptyDesign } from '../../../geometry/design/defaults.ts';
import type { Design } from '../../../geometry/design/schema.ts';
import { makePlate } from '../../../geometry/pipeline/make-plate.ts';
import { createStore } from '../../../geometry/pipeline/solve-store.ts';
import { BUILT_IN } from '../../../geometry/stock/built-in-stock.ts';
import { metalAround } from '../../judge/metal.ts';
import { importText, svg } from './node-window.ts';

const ring = (r: number): string => `M${50 - r} 50a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0Z`;

/** Three rings of metal, each loose in the next, and a letter whose counter is a fourth. */
const RINGS =
  `<path fill-rule="evenodd" d="${[48, 42, 36, 30, 24, 19].map(ring).join('')}"/>` +
  '<path fill-rule="evenodd" d="M36 40H58Q64 40 64 46T58 52Q64 52 64 57T58 62H36Z M44 44V49H57V44Z M44 54V58H57V54Z"/>';

test('rings in rings and a letter within hold, by JTS, at three sizes', () => {
  const drawing = importText(svg(RINGS));
  if ('trouble' in drawing) throw new Error(drawing.trouble);
  const empty = emptyDesign();
  for (const diameterMm of [260, 400, 520]) {
    const design: Design = {
      ...empty,
      plates: [{ id: 'only', name: 'Only', diameter: { mm: diameterMm }, quantity: 1 }],
      elements: [
        {
          kind: 'artwork',
          id: 'a',
          name: 'rings.svg',
          path: drawing.path,
          x: 0,
          y: 0,
          size: 1.5,
          turnDeg: 0,
          around: 'once',
        },
      ],
    };
    const plate = makePlate(design, 'only', { get: () => undefined, motif: motifById }, createStore(), BUILT_IN);
    expect(plate.islands.length).toBeGreaterThanOrEqual(4);
    expect(plate.findings.filter((f) => f.code === 'not-one-piece')).toEqual([]);
    const metal = metalAround(
      plate.openings.map((o) => o.region),
      20,
    );
    expect(metal.pieces).toBe(1);
    expect(metal.shrunk((0.98 * plate.rules.leastBridgeMm) / 2).pieces).toBe(1);
  }
});
