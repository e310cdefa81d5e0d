import type { Contour, Point, Vertex } from '../../shapes.ts';
import { tabRuleFor } from '../tab-rule.ts';
import type { CutPass, CutSettings, Tab } from '../sheet-plan.ts';
import type { WitnessMark } from './witness.ts';

/** When a circle of a mark is cut: before anything of its plate, or as soon as these passes are done. */
export type When = { readonly kind: 'first' } | { readonly kind: 'after'; readonly passes: readonly string[] };

export interface WitnessPass {
  readonly mark: string;
  readonly when: When;
  readonly pass: CutPass;
}

/**
 * The circles of marks as passes, for passes that are in the order of cutting. Words are shared out evenly over the
 * stages of a plate; the last stage ends with its rim. Both circles are cut as holes: the kerf lies inside them.
 */
function witnessPasses(
  passes: readonly CutPass[],
  marks: readonly WitnessMark[],
  { kerfMm, tab }: Pick<CutSettings, 'kerfMm' | 'tab'>,
): WitnessPass[] {
  // The ring between the circles is held at two places until it is measured.
  const { widthMm } = tab ?? tabRuleFor(kerfMm, 0);
  return marks.flatMap((mark): WitnessPass[] => {
    const own = passes.filter((p) => p.plate === mark.plate && p.kind !== 'witness');
    const stages = marks.reduce((most, m) => (m.plate === mark.plate ? Math.max(most, m.stage) : most), 1);
    const before = passesOfStages(own, mark.stage, stages);
    const [inner, outer] = [mark.innerMm / 2 - kerfMm / 2, mark.outerMm / 2 - kerfMm / 2];
    const first = circlePass(mark, 'small', mark.innerMm / 2, inner, 0, []);
    // Pierced in the middle of the ring, which is waste.
    const pierceMm = (mark.innerMm + mark.outerMm) / 4;
    const after = [first.id, ...before];
    const last = {
      ...circlePass(mark, 'large', mark.outerMm / 2, outer, pierceMm, after),
      tabsMm: [0.25, 0.75].map((share): Tab => {
        const middle = share * 2 * Math.PI * outer;
        const half = (widthMm + kerfMm) / 2;
        const [from, to] = [pierceMm, outer].map((mm) => onCircle(mark.at, mm, (middle + half) / outer));
        return { fromMm: middle - half, toMm: middle + half, leadIn: [from!, to!] };
      }),
    };
    return [
      { mark: mark.id, when: { kind: 'first' }, pass: first },
      { mark: mark.id, when: { kind: 'after', passes: after }, pass: last },
    ];
  });
}

/**
 * The passes with the witness passes put in where they belong: first ones before the first pass of their plate, the
 * others straight after the last pass they wait for. Whatever reorders them later has `after` to keep to.
 */
export function addWitness(
  passes: readonly CutPass[],
  marks: readonly WitnessMark[],
  settings: Pick<CutSettings, 'kerfMm' | 'tab'>,
): CutPass[] {
  const witness = witnessPasses(passes, marks, settings);
  const order = new Map(passes.map((p, i) => [p.id, i]));
  const beforeOf = new Map<string, CutPass[]>();
  const afterOf = new Map<number, CutPass[]>();
  for (const { when, pass } of witness) {
    if (when.kind === 'first') push(beforeOf, pass.plate, pass);
    else push(afterOf, Math.max(...when.passes.map((id) => order.get(id) ?? -1)), pass);
  }
  const begun = new Set<string>();
  return passes.flatMap((pass, i) => {
    const firsts = beforeOf.get(pass.plate) ?? [];
    const out = begun.has(pass.plate) ? [] : [...firsts];
    begun.add(pass.plate);
    return [...out, { ...pass, after: [...pass.after, ...firsts.map((f) => f.id)] }, ...(afterOf.get(i) ?? [])];
  });
}

function push<K>(into: Map<K, CutPass[]>, key: K, pass: CutPass): void {
  const known = into.get(key);
  if (known) known.push(pass);
  else into.set(key, [pass]);
}

/** Ids of all passes of a plate up to the end of a stage. */
function passesOfStages(own: readonly CutPass[], stage: number, stages: number): string[] {
  if (stage >= stages) return own.map((p) => p.id);
  const words = [...new Set(own.filter((p) => p.kind === 'opening').map((p) => p.word))];
  const done = new Set(words.slice(0, Math.round((stage / stages) * words.length)));
  return own.filter((p) => p.kind === 'opening' && done.has(p.word)).map((p) => p.id);
}

function circlePass(
  mark: WitnessMark,
  which: 'small' | 'large',
  netRadius: number,
  pathRadius: number,
  pierceMm: number,
  after: readonly string[],
): CutPass {
  const pierce = onDiagonal(mark.at, pierceMm);
  return {
    id: `${mark.id}/${which}`,
    kind: 'witness',
    plate: mark.plate,
    word: `${mark.id}/${which}`,
    net: circle(mark.at, netRadius),
    path: circle(mark.at, pathRadius),
    pierce,
    leadIn: [
      { ...pierce, bulge: 0 },
      { ...onDiagonal(mark.at, pathRadius), bulge: 0 },
    ],
    after,
  };
}

/** Two half circles, counter-clockwise like every opening. */
function circle(at: Point, radius: number): Contour {
  return [
    { ...onDiagonal(at, radius), bulge: 1 },
    { ...onDiagonal(at, -radius), bulge: 1 },
  ];
}

/** So far around a circle from the diagonal where it begins. */
function onCircle(at: Point, mm: number, rad: number): Vertex {
  const angle = Math.PI / 4 + rad;
  return { x: at.x + mm * Math.cos(angle), y: at.y + mm * Math.sin(angle), bulge: 0 };
}

/** Pierces, lead-ins and tabs lie on the diagonals: left, right, above and below the ring is whole to be measured. */
function onDiagonal(at: Point, mm: number): Point {
  return { x: at.x + mm * Math.SQRT1_2, y: at.y + mm * Math.SQRT1_2 };
}
