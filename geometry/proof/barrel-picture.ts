/**
 * The end of a barrel seen from straight in front, with the mark that the plate leaves on it, as plain paths: the same
 * picture on paper and on the screen. True proportions: millimetres about the middle of the head, x to the right, y down.
 *
 * In: a design, and one of its plates with its cut plan or what is seen of it. Out: what to paint, the first lowest.
 * The same design gives the same picture; a plate for the barrel's side is shown flat, on its staves.
 */
import { barrelById } from '../barrel/barrels.ts';
import { headDiameter } from '../barrel/blank.ts';
import { staveMm } from '../barrel/proportions.ts';
import { headRecess } from '../barrel/recess.ts';
import type { Design } from '../design/schema.ts';
import type { PlannedPlate } from '../files/paper/plate-drawing.ts';
import { openingsPath } from '../files/svg/svg-path.ts';
import { boardPaths } from './boards.ts';
import { annulus, disc, lune, num, type PicturePath } from './picture-path.ts';

export interface BarrelPicture {
  readonly paths: readonly PicturePath[];
  /** Half the side of the square that holds all of it, mm. */
  readonly reachMm: number;
}

/** What is seen of a plate on the wood: the plate itself, or what it leaves there. */
export interface BarrelSight {
  /** All openings as path data, mm about the plate's middle, y down. */
  readonly openings: string;
  readonly diameterMm: number;
  readonly state: 'plate' | 'paint' | 'char';
  /** Colour of the paint. */
  readonly paint?: string | undefined;
}

/** Wood, iron and marks in daylight, by eye. */
const OAK = { head: '#d9b988', stave: '#c59c68', side: '#a97f50', joint: '#5d4025', deep: '#3b2817' };
const IRON = { body: '#77736d', light: '#a5a09a', dark: '#4d4a46' };
const STEEL = '#d4d3ce';
const MARK = { paint: '#26211d', char: '#2b1a10', scorch: '#7a4a22' };

/** How much wider the belly is than its end, and where hoops lie between end and belly: by eye, after usual casks. */
const BELLY = 1.13;
const STAVES = 30;

export function composeBarrelPicture(design: Design, { plate, plan }: PlannedPlate, paint?: string): BarrelPicture {
  const state = design.stock.use === 'torch' ? 'char' : 'paint';
  return drawBarrel(design, { openings: openingsPath(plan), diameterMm: plate.diameterMm, state, paint });
}

export function drawBarrel(design: Design, sight: BarrelSight): BarrelPicture {
  const { diameterMm } = sight;
  const mark = markPaths(sight);
  if (design.surface !== 'head') return flatPicture(diameterMm, design.surface.lines, mark);
  const { smallerMm } = headDiameter(design.head);
  const head = Math.max(smallerMm, diameterMm, 1);
  const { source } = design.head;
  const wall = staveMm(source.kind === 'barrel' ? barrelById(source.barrel) : undefined, head);
  const r = head / 2;
  // The chime slopes outwards to the ends of the staves.
  const slope = 0.3 * wall;
  const end = r + slope + wall;
  const belly = end * BELLY;
  const depth = headRecess(design.head).mm;
  return {
    reachMm: belly * 1.02,
    paths: [
      ...bodyPaths(end, belly),
      { d: annulus(end, r), fill: OAK.stave },
      ...staveEnds(r + slope, end),
      { d: annulus(r + slope, r), fill: OAK.side },
      { d: annulus(r + slope, r), fill: OAK.deep, opacity: 0.25 },
      { d: disc(r), fill: OAK.head },
      ...boardPaths(r),
      ...mark,
      ...recessShadow(r, depth),
      { d: disc(r), stroke: OAK.deep, width: head * 0.0022 },
      { d: disc(r + slope), stroke: OAK.joint, width: head * 0.0012 },
    ],
  };
}

/** The plate that leaves the mark: a ring that masks leaves none. */
export function findMarkingPlate(design: Design, plates: readonly PlannedPlate[]): PlannedPlate | undefined {
  return plates.find(({ plate }) => design.plates.find((p) => p.id === plate.plateId)?.masks === undefined);
}

function markPaths({ openings, diameterMm, state, paint }: BarrelSight): PicturePath[] {
  if (openings === '') return [];
  if (state === 'plate') return platePaths(openings, diameterMm);
  if (state === 'paint') return [{ d: openings, fill: paint ?? MARK.paint }];
  // A flame tans the wood a little around what it chars.
  const halo = (share: number, opacity: number): PicturePath => ({
    d: openings,
    stroke: MARK.scorch,
    width: diameterMm * share,
    opacity,
  });
  return [halo(0.02, 0.16), halo(0.011, 0.22), halo(0.005, 0.35), { d: openings, fill: paint ?? MARK.char }];
}

/** Bright sheet with the wood seen through it, and its shadow around the rim. */
function platePaths(openings: string, diameterMm: number): PicturePath[] {
  const rim = disc(diameterMm / 2);
  return [
    { d: rim, stroke: OAK.deep, width: diameterMm * 0.014, opacity: 0.3 },
    { d: `${rim}${openings}`, fill: STEEL },
    { d: `${rim}${openings}`, stroke: IRON.dark, width: diameterMm * 0.0015 },
  ];
}

/** The staves behind the end, swelling to the belly, and the hoops that hold them. */
function bodyPaths(end: number, belly: number): PicturePath[] {
  const between = (share: number) => end + (belly - end) * share;
  const shade = [0.75, 0.5, 0.25].map((share): PicturePath => ({
    d: annulus(belly, between(share)),
    fill: OAK.deep,
    opacity: 0.16,
  }));
  const hoop = (outer: number, inner: number): PicturePath[] => [
    { d: annulus(outer, inner), fill: IRON.body },
    { d: annulus(outer, outer - (outer - inner) * 0.35), fill: IRON.dark, opacity: 0.45 },
    { d: annulus(inner + (outer - inner) * 0.38, inner + (outer - inner) * 0.16), fill: IRON.light, opacity: 0.6 },
  ];
  return [
    { d: disc(belly), fill: OAK.side },
    { d: spokes(end, belly, 0), stroke: OAK.joint, width: end * 0.003, opacity: 0.7 },
    ...shade,
    { d: annulus(between(0.42), between(0.36)), fill: OAK.deep, opacity: 0.25 },
    ...hoop(between(0.36), end * 1.002),
    ...hoop(between(0.97), between(0.78)),
    { d: disc(belly), stroke: OAK.deep, width: end * 0.002 },
  ];
}

/** The ends of the staves: each a little lighter or darker, with the joints between them. */
function staveEnds(inner: number, outer: number): PicturePath[] {
  const tones = Array.from({ length: STAVES }, (_, i): PicturePath => {
    const [from, to] = [i, i + 1].map((k) => (2 * Math.PI * (k + staveShift(k % STAVES))) / STAVES);
    const tone = ((i * 37) % 11) / 11;
    return {
      d: wedge(inner, outer, from ?? 0, to ?? 0),
      fill: tone > 0.5 ? '#f2d9b0' : OAK.deep,
      opacity: 0.05 + 0.12 * Math.abs(tone - 0.5),
    };
  });
  return [
    ...tones,
    { d: spokes(inner, outer, 1), stroke: OAK.joint, width: outer * 0.0032 },
    { d: annulus(outer, outer - (outer - inner) * 0.07), fill: OAK.deep, opacity: 0.35 },
  ];
}

/** Staves are of differing width: how far a joint stands from where an even one would, as a share of a stave. */
function staveShift(k: number): number {
  return (((k * 53) % 17) / 17 - 0.5) * 0.34;
}

function spokes(inner: number, outer: number, shifted: 0 | 1): string {
  return Array.from({ length: STAVES }, (_, k) => {
    const rad = (2 * Math.PI * (k + staveShift(k))) / STAVES;
    const [s, c] = [Math.sin(rad), -Math.cos(rad)];
    const from = shifted === 1 ? inner : inner * 1.01;
    return `M${num(from * s)} ${num(from * c)}L${num(outer * s)} ${num(outer * c)}`;
  }).join('');
}

function wedge(inner: number, outer: number, from: number, to: number): string {
  const at = (r: number, rad: number) => `${num(r * Math.sin(rad))} ${num(-r * Math.cos(rad))}`;
  const [i, o] = [num(inner), num(outer)];
  return `M${at(inner, from)}L${at(outer, from)}A${o} ${o} 0 0 1 ${at(outer, to)}L${at(inner, to)}A${i} ${i} 0 0 0 ${at(inner, from)}Z`;
}

/** Light comes from the upper left: the chime throws its shadow on the head there, the softer the farther. */
function recessShadow(r: number, depth: number): PicturePath[] {
  return [0.15, 0.32, 0.5, 0.7, 0.92].map((share) => ({
    d: lune(r, depth * share * 0.55, depth * share * 0.75),
    fill: OAK.deep,
    opacity: 0.13,
  }));
}

/** The plate on the staves of a barrel's side, laid flat. */
function flatPicture(diameterMm: number, lines: 'along-hoops' | 'up-staves', mark: PicturePath[]): BarrelPicture {
  const r = (diameterMm / 2) * 1.08;
  return {
    reachMm: r * 1.02,
    paths: [
      { d: disc(r), fill: OAK.head },
      ...boardPaths(r, lines === 'along-hoops' ? 'upright' : 'level'),
      ...mark,
      { d: disc(r), stroke: OAK.joint, width: r * 0.005 },
    ],
  };
}
