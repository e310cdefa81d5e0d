import { loadFaces } from '../../../fonts/node-faces.ts';
import { emptyDesign, newLineText } from '../../../geometry/design/defaults.ts';
import type { Design } from '../../../geometry/design/schema.ts';
import { makePlate } from '../../../geometry/pipeline/make-plate.ts';
import { createStore } from '../../../geometry/pipeline/solve-store.ts';
import { BUILT_IN } from '../../../geometry/stock/built-in-stock.ts';
import type { Claim } from '../claim.ts';

/** Head diameter, bulge and plate in mm. */
const onHead = (headMm: number, crownMm: number, plateMm: number): Partial<Design> => ({
  head: { source: { kind: 'measured', alongMm: headMm, acrossMm: headMm }, clearanceMm: 5, crownMm },
  plates: [{ id: 'large', name: 'Large', diameter: { mm: plateMm }, quantity: 1 }],
});
const onSide = (plateMm: number, side: object): Partial<Design> => ({
  ...onHead(540, 0, plateMm),
  surface: {
    kind: 'side',
    bilgeMm: 660,
    endMm: 580,
    lengthMm: 900,
    lines: 'along-hoops',
    spread: true,
    ...side,
  },
});

/** Each with the codes of which one must stop the cut. */
const CASES: Readonly<Record<string, readonly [Partial<Design>, string]>> = {
  'plate larger than the head': [onHead(500, 0, 501), 'plate-wont-drop'],
  'bulge beyond a half sphere': [onHead(200, 101, 150), 'crown-nonsense'],
  'hollow beyond a half sphere': [onHead(180, -91, 150), 'crown-nonsense'],
  'head of nothing': [onHead(0, 0, 300), 'head-diameter-nonsense'],
  'side that nobody measured': [onSide(300, { bilgeMm: undefined }), 'side-nonsense'],
  'belly of nothing': [onSide(300, { bilgeMm: 0 }), 'side-nonsense'],
  'barrel that tapers the wrong way': [onSide(300, { endMm: 700 }), 'side-nonsense'],
  'plate longer than the staves': [onSide(420, { lengthMm: 400 }), 'plate-too-long'],
  'plate more than half round': [onSide(400, { bilgeMm: 240, endMm: 230 }), 'plate-too-wide'],
  'sheet that breaks when rolled': [
    {
      ...onSide(200, { bilgeMm: 300, endMm: 280 }),
      stock: { material: 'birch-plywood', thicknessMm: 3, process: 'co2-laser', use: 'paint' },
    },
    'bend-too-tight',
  ],
  'ring around a plate that is gone': [
    { plates: [{ id: 'large', name: 'Ring', diameter: { mm: 400 }, quantity: 1, masks: 'gone' }] },
    'mask-missing',
  ],
  'ring no larger than its plate': [
    {
      plates: [
        { id: 'small', name: 'Small', diameter: { mm: 300 }, quantity: 1 },
        { id: 'large', name: 'Ring', diameter: { mm: 300 }, quantity: 1, masks: 'small' },
      ],
    },
    'mask-none',
  ],
};

export const REFUSAL_CLAIMS: readonly Claim[] = [
  {
    name: 'impossible-refused-with-a-sentence',
    wanted: `all ${Object.keys(CASES).length}`,
    async measure() {
      const base: Design = { ...emptyDesign(), elements: [newLineText('year', 'stardos-stencil-700')] };
      const { faces } = await loadFaces(base);
      const silent = Object.entries(CASES).filter(([, [part, code]]) => {
        const { findings, verdict } = makePlate({ ...base, ...part }, 'large', faces, createStore(), BUILT_IN);
        const stop = findings.find((f) => f.severity === 'stop' && f.code === code);
        return verdict !== 'stop' || stop === undefined || !/^[A-Z\u201c].*\w.*[.?]$/s.test(stop.sentence);
      });
      const count = Object.keys(CASES).length;
      const names = silent.map(([name]) => name).join(', ');
      const unit = silent.length > 0 ? `of ${count} cases, not: ${names}` : `of ${count} cases`;
      return { value: count - silent.length, unit, ok: silent.length === 0 };
    },
  },
];
