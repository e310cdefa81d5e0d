import type { CutPass, CutSettings, SheetPlan } from '../../geometry/cutplan/sheet-plan.ts';
import type { NestedSheet } from '../../geometry/sheet/sheets.ts';
import { type Area, difference, parts, polygon, shrink } from './jts.ts';
import { boxAround, type Box, flat, gapToRing, holds, roundArea, segmentsCross, steps, type XY } from './plane.ts';

/**
 * Looks a sheet's plan over and shares no code with the maker: arcs are worked out here, areas by JTS. Gives a sentence
 * for each thing that is wrong; what pieces may tip it takes from the plan (tests/cutplan/slugs.test.ts judges that).
 */
export function judgeSheetPlan(plan: SheetPlan, sheet: NestedSheet, settings: CutSettings): string[] {
  const drawn = plan.passes.map(drawnOf);
  return [
    ...judgeOrder(drawn, sheet),
    ...judgeWords(plan),
    ...judgeWays(plan),
    ...drawn.flatMap((d) => judgeKerf(d, settings.kerfMm / 2)),
    ...judgeLeads(drawn, sheet, settings.kerfMm / 2),
    ...judgeRapids(plan, drawn, settings.kerfMm / 2),
  ];
}

/** What the kerf may miss the true shape by. */
export const KERF_ERROR_MM = 0.02;
/** A nozzle goes around what tips more often than once in twenty. */
const TIP_LIMIT = 0.05;
/** Chords of the judge stay so near to their arcs. */
const FLAT_MM = 0.001;
/** Slivers under this are the judge's own rounding. */
const SPECK_MM2 = 1e-4;
/** The judge flattens where the maker has arcs: two ends that should meet may be so far apart. */
const MEET_MM = 0.002;

interface Drawn {
  readonly pass: CutPass;
  readonly path: readonly XY[];
  readonly net: readonly XY[];
  readonly box: Box;
  /** The waste is inside the path, which then runs counter-clockwise. */
  readonly isHole: boolean;
  readonly leadIn: readonly XY[];
}

function drawnOf(pass: CutPass): Drawn {
  const path = flat(pass.path, true, FLAT_MM);
  const leadIn = flat(pass.leadIn, false, FLAT_MM);
  return { pass, path, net: flat(pass.net, true, FLAT_MM), box: boxAround(path), isHole: roundArea(path) > 0, leadIn };
}

/** What lies inside of a cut comes before it; what a pass waits for has been cut; every plate ends with its rim. */
function judgeOrder(drawn: readonly Drawn[], sheet: NestedSheet): string[] {
  const wrong: string[] = [];
  const done = new Set<string>();
  drawn.forEach(({ pass, path, box }, i) => {
    for (const id of pass.after) if (!done.has(id)) wrong.push(`${pass.id} is cut before ${id}, which it waits for`);
    done.add(pass.id);
    for (const later of drawn.slice(i + 1)) {
      const { box: b } = later;
      if (b.minX < box.minX || b.maxX > box.maxX || b.minY < box.minY || b.maxY > box.maxY) continue;
      if (later.pass.kind !== 'witness' && holds(path, later.path[0]!))
        wrong.push(`${later.pass.id} is cut after ${pass.id} around it`);
    }
  });
  for (const { id } of sheet.plates) {
    const own = drawn.filter((d) => d.pass.plate === id && d.pass.kind !== 'witness');
    if (own.at(-1)?.pass.kind !== 'rim') wrong.push(`${id} does not end with its rim`);
  }
  return wrong;
}

/** Between the first and the last letter of a word there is none of another word. */
function judgeWords(plan: SheetPlan): string[] {
  const lettered = plan.passes.filter((p) => p.kind === 'opening' && !p.word.includes('/:'));
  const finished = new Set<string>();
  let word = '';
  const wrong: string[] = [];
  for (const pass of lettered) {
    if (pass.word === word) continue;
    finished.add(word);
    word = pass.word;
    if (finished.has(word)) wrong.push(`${word} is left for another word and taken up again`);
  }
  return wrong;
}

/** The head never jumps: each way goes from the end of one pass to the pierce of the next, and that leads to its path. */
function judgeWays(plan: SheetPlan): string[] {
  const wrong: string[] = [];
  let at: XY = { x: 0, y: 0 };
  plan.passes.forEach((pass, i) => {
    const way = plan.rapids[i]?.way ?? [];
    if (apart(way[0], at) || apart(way.at(-1), pass.pierce)) wrong.push(`the way to ${pass.id} jumps`);
    if (apart(pass.leadIn[0], pass.pierce) || apart(pass.leadIn.at(-1), pass.path[0]))
      wrong.push(`the lead-in of ${pass.id} jumps`);
    at = pass.leadOut?.at(-1) ?? pass.path[0]!;
  });
  if (plan.rapids.length !== plan.passes.length) wrong.push('there are not as many ways as passes');
  return wrong;
}

function apart(a: XY | undefined, b: XY | undefined): boolean {
  return !a || !b || Math.hypot(a.x - b.x, a.y - b.y) > MEET_MM;
}

/**
 * The kerf swept along the path leaves the true shape: nothing that stays is cut, and all is cut that a round beam can
 * reach (corners sharper than the beam are left as round as it is).
 */
function judgeKerf({ pass, path, net, isHole }: Drawn, half: number): string[] {
  const ways = polygon(path);
  const want = polygon(net);
  const got = isHole ? shrink(ways, -half) : shrink(ways, half);
  const reached = isHole ? shrink(shrink(want, half), -half) : want;
  const most = isHole ? want : shrink(shrink(want, -half), half);
  const more = sizeOf(difference(got, shrink(most, -KERF_ERROR_MM)));
  const less = sizeOf(difference(reached, shrink(got, -KERF_ERROR_MM)));
  const side = isHole ? ['cuts into what stays', 'leaves waste'] : ['leaves waste', 'cuts into what stays'];
  return [
    ...(more > SPECK_MM2 ? [`${pass.id} ${side[0]} (${more} mm2)`] : []),
    ...(less > SPECK_MM2 ? [`${pass.id} ${side[1]} (${less} mm2)`] : []),
  ];
}

/** How far the swept kerf is off the true shape, mm: metal cut that stays, or waste left that a round beam reaches. */
export function sweptErrorMm(pass: CutPass, kerfMm: number): number {
  const { path, net, isHole } = drawnOf(pass);
  const half = kerfMm / 2;
  const cutTooFar = steps([...path, path[0]!], 0.5).map((p) => half - gapToRing(net, p));
  const want = polygon(net);
  const reached = isHole ? shrink(shrink(want, half), -half) : shrink(shrink(want, -half), half);
  const edge = parts(reached).flatMap((part) => part.getCoordinates());
  return [...cutTooFar, ...edge.map((p) => gapToRing(path, p) - half)].reduce((a, b) => Math.max(a, b), 0);
}

function sizeOf(area: Area): number {
  return area.getArea();
}

/** Lead-ins stay in waste, half a kerf off all that stays, and cross no cut and no other lead-in. */
function judgeLeads(drawn: readonly Drawn[], sheet: NestedSheet, half: number): string[] {
  const wrong: string[] = [];
  drawn.forEach(({ pass, leadIn }, i) => {
    const points = steps(leadIn, 0.1);
    for (const p of points) {
      if (p.x < 0 || p.y < 0 || p.x > sheet.widthMm || p.y > sheet.heightMm)
        wrong.push(`${pass.id} is led in from beyond the sheet`);
      const metal = staysAt(p, pass, drawn, sheet, half - KERF_ERROR_MM);
      if (metal) {
        wrong.push(`${pass.id} is led in through ${metal}`);
        break;
      }
    }
    const box = boxAround(leadIn);
    drawn.forEach((other, k) => {
      if (apartBoxes(box, other.box, 20)) return;
      // Its own path it meets once, at the end: the last stretch is left out.
      const own = k === i ? leadIn.slice(0, -1) : leadIn;
      if (crossesLoop(own, other.path))
        wrong.push(`${pass.id} is led in across ${k === i ? 'its own cut' : other.pass.id}`);
      if (k > i && meets(leadIn, other.leadIn)) wrong.push(`the lead-ins of ${pass.id} and ${other.pass.id} cross`);
    });
  });
  return wrong;
}

/** The plate whose staying metal a point lies in, or comes nearer to than so much; undefined in waste. */
function staysAt(
  p: XY,
  own: CutPass,
  drawn: readonly Drawn[],
  sheet: NestedSheet,
  clearMm: number,
): string | undefined {
  for (const plate of sheet.plates) {
    const out = Math.hypot(p.x - plate.x, p.y - plate.y) - plate.diameterMm / 2;
    if (out >= clearMm) continue;
    const openings = drawn.filter((d) => d.pass.plate === plate.id && d.pass.kind === 'opening' && inBox(p, d.box, 1));
    const inWaste =
      out < -clearMm &&
      openings.some((d) => d.isHole && holds(d.net, p) && gapToRing(d.net, p) >= clearMm) &&
      !openings.some((d) => !d.isHole && (holds(d.net, p) || gapToRing(d.net, p) < clearMm));
    if (!inWaste) return `${plate.id} (${own.kind})`;
  }
  return undefined;
}

/** Ways at cutting height pass over no piece that has been cut free and may stand. */
function judgeRapids(plan: SheetPlan, drawn: readonly Drawn[], half: number): string[] {
  const risky = new Set(plan.slugs.filter((s) => s.tips > TIP_LIMIT && !s.isTabbed).map((s) => s.pass));
  const known = new Set(plan.slugs.map((s) => s.pass));
  const wrong = plan.passes
    .filter((p) => p.kind !== 'witness' && !known.has(p.id))
    .map((p) => `nothing is said of the piece of ${p.id}`);
  const standing: Drawn[] = [];
  plan.rapids.forEach((rapid, i) => {
    if (!rapid.raised && standing.length > 0) {
      const box = boxAround(rapid.way);
      const near = standing.filter((d) => !apartBoxes(box, d.box, 0));
      const over =
        near.length > 0 &&
        steps(rapid.way, 0.25).flatMap((p) => near.filter((d) => inBox(p, d.box, 0) && isOver(p, d, half)))[0];
      if (over) wrong.push(`the way to ${rapid.to} passes over the piece of ${over.pass.id}`);
    }
    if (risky.has(drawn[i]!.pass.id)) standing.push(drawn[i]!);
  });
  return wrong;
}

/** Over the piece itself: inside the path by half a kerf and more. */
function isOver(p: XY, { path }: Drawn, half: number): boolean {
  return holds(path, p) && gapToRing(path, p) > half + MEET_MM;
}

function apartBoxes(a: Box, b: Box, mm: number): boolean {
  return a.minX - b.maxX > mm || b.minX - a.maxX > mm || a.minY - b.maxY > mm || b.minY - a.maxY > mm;
}

function inBox(p: XY, b: Box, mm: number): boolean {
  return p.x >= b.minX - mm && p.x <= b.maxX + mm && p.y >= b.minY - mm && p.y <= b.maxY + mm;
}

function crossesLoop(line: readonly XY[], loop: readonly XY[]): boolean {
  for (let i = 1; i < line.length; i++)
    for (let k = 0; k < loop.length; k++)
      if (segmentsCross(line[i - 1]!, line[i]!, loop[k]!, loop[(k + 1) % loop.length]!)) return true;
  return false;
}

function meets(a: readonly XY[], b: readonly XY[]): boolean {
  return a.some((p, i) => i > 0 && b.some((q, k) => k > 0 && segmentsCross(a[i - 1]!, p, b[k - 1]!, q)));
}
