import {
  ALUMINIUM_5052,
  ALUMINIUM_6061,
  BIRCH_PLYWOOD,
  type Elastic,
  HDPE,
  MILD_STEEL,
  POLYCARBONATE,
  PVC,
  STAINLESS_304,
  STAINLESS_316,
  STAINLESS_430,
} from './elastic.ts';
import { gaugeMm, type GaugeSystem } from './gauges.ts';
import type { Family } from './processes.ts';
import { COMMON_PRACTICE, type Sourced } from './sourced.ts';
import { SAID_EN } from '../words/said-en.ts';
import type { ReasonKey } from '../words/say.ts';

/** yes: usual; poor: possible, but ask the shop; never: dangerous or useless. */
export type Fit =
  | { readonly grade: 'yes'; readonly reason: '' }
  /** Why not, in English and by its name in the table of words. */
  | { readonly grade: 'poor' | 'never'; readonly reason: string; readonly why: ReasonKey };

export interface SheetThickness {
  readonly mm: number;
  /** As it is asked for at the counter: `16 ga`, `1.5 mm`. */
  readonly label: string;
}

export interface Material {
  readonly id: string;
  readonly name: string;
  readonly family: Family;
  /** What it stands, for a customer. */
  readonly sentence: string;
  readonly densityKgM3: Sourced;
  /** Absent for film, which lies on the wood and takes its stiffness from it. */
  readonly elastic?: Elastic;
  readonly thicknesses: readonly SheetThickness[];
  /** Which of them are usual is common practice, no source; what a gauge means is in gauges.ts. */
  readonly torch: Fit;
  /** By process id; a process that is absent does not cut it. */
  readonly processes: Readonly<Record<string, Fit>>;
}

const YES: Fit = { grade: 'yes', reason: '' };
const poor = (why: ReasonKey): Fit => ({ grade: 'poor', reason: SAID_EN.reasons[why], why });
const never = (why: ReasonKey): Fit => ({ grade: 'never', reason: SAID_EN.reasons[why], why });

const STEEL_CUT: Readonly<Record<string, Fit>> = {
  'fibre-laser': YES,
  'co2-laser': YES,
  'water-jet': YES,
  plasma: YES,
  router: never('steelRouter'),
};
const ALUMINIUM_CUT: Readonly<Record<string, Fit>> = {
  'fibre-laser': YES,
  'co2-laser': poor('brightAluminium'),
  'water-jet': YES,
  plasma: YES,
  router: YES,
};
const NO_CURRENT = never('noCurrent');
const NO_FIBRE = never('noFibre');
const ALUMINIUM_TORCH = poor('aluminiumTorch');

export const MATERIALS: readonly Material[] = [
  {
    id: 'stainless-304',
    name: '304 stainless steel',
    family: 'metal',
    sentence: 'The usual choice: stands torch and paint for years and wipes clean.',
    densityKgM3: { value: 7900, source: 'EN 10088-1 as reproduced (US data sheets: 8000)' },
    elastic: STAINLESS_304,
    thicknesses: sheets('stainless', [20, 18, 16, 14, 11], [1, 1.2, 1.5, 2, 3]),
    torch: YES,
    processes: STEEL_CUT,
  },
  {
    id: 'stainless-316',
    name: '316 stainless steel',
    family: 'metal',
    sentence: 'As 304, and stands salt and strong cleaners too; costs more.',
    densityKgM3: { value: 8000, source: 'EN 10088-1 as reproduced' },
    elastic: STAINLESS_316,
    thicknesses: sheets('stainless', [18, 16, 14], [1, 1.5, 2, 3]),
    torch: YES,
    processes: STEEL_CUT,
  },
  {
    id: 'stainless-430',
    name: '430 stainless steel',
    family: 'metal',
    sentence: 'Magnetic, so magnets hold it down for painting; stands the torch.',
    densityKgM3: { value: 7700, source: 'EN 10088-1, from memory' },
    elastic: STAINLESS_430,
    thicknesses: sheets('stainless', [20, 18, 16], [0.8, 1, 1.5]),
    torch: YES,
    processes: STEEL_CUT,
  },
  {
    id: 'aluminium-5052',
    name: '5052 aluminium',
    family: 'metal',
    sentence: 'A third of the weight of steel and does not rust: for paint, not for the torch.',
    densityKgM3: { value: 2680, source: 'Aluminum Association value in two service-centre tables' },
    elastic: ALUMINIUM_5052,
    thicknesses: sheets('aluminium', [18, 16, 14, 12], [1, 1.5, 2, 3]),
    torch: ALUMINIUM_TORCH,
    processes: ALUMINIUM_CUT,
  },
  {
    id: 'aluminium-6061',
    name: '6061 aluminium',
    family: 'metal',
    sentence: 'Stiffer than 5052 and as light: for paint, not for the torch.',
    densityKgM3: { value: 2700, source: 'Aluminum Association value in two service-centre tables' },
    elastic: ALUMINIUM_6061,
    thicknesses: sheets('aluminium', [16, 14, 12, 11], [1.5, 2, 3]),
    torch: ALUMINIUM_TORCH,
    processes: ALUMINIUM_CUT,
  },
  {
    id: 'mild-steel',
    name: 'Mild steel',
    family: 'metal',
    sentence: 'Cheap and stands the torch, but rusts unless it is oiled.',
    densityKgM3: { value: 7850, source: 'EN 1991-1-1 Table A.4 (77 to 78.5 kN/m3), from memory' },
    elastic: MILD_STEEL,
    thicknesses: sheets('carbon', [20, 18, 16, 14, 11], [1, 1.5, 2, 3]),
    torch: YES,
    processes: STEEL_CUT,
  },
  {
    id: 'polycarbonate',
    name: 'Polycarbonate',
    family: 'plastic',
    sentence: 'Clear and tough, so you see where you paint; paint only.',
    densityKgM3: { value: 1200, source: 'data sheets, 1200 to 1220' },
    elastic: POLYCARBONATE,
    thicknesses: sheets(undefined, [], [1, 1.5, 2, 3]),
    torch: never('softensTorch'),
    processes: {
      'fibre-laser': NO_FIBRE,
      'co2-laser': never('meltsBrowns'),
      'water-jet': YES,
      plasma: NO_CURRENT,
      router: YES,
    },
  },
  {
    id: 'pet-film',
    name: 'PET film',
    family: 'plastic',
    sentence: 'Thin film that lies close to a crowned head, for a few coats of paint.',
    densityKgM3: { value: 1390, source: 'makers of film, 1390 to 1400' },
    thicknesses: sheets(undefined, [], [0.19, 0.25, 0.35, 0.5]),
    torch: never('filmTorch'),
    processes: {
      'fibre-laser': NO_FIBRE,
      'co2-laser': YES,
      'water-jet': poor('filmFlutters'),
      plasma: NO_CURRENT,
      router: poor('filmLifts'),
    },
  },
  {
    id: 'hdpe',
    name: 'HDPE',
    family: 'plastic',
    sentence: 'Soft and cheap; dried paint peels off it. Paint only.',
    densityKgM3: { value: 950, source: 'thermal-analysis poster, 940 to 960' },
    elastic: HDPE,
    thicknesses: sheets(undefined, [], [1.5, 3, 6]),
    torch: never('meltsTorch'),
    processes: {
      'fibre-laser': NO_FIBRE,
      'co2-laser': never('meltsBurns'),
      'water-jet': YES,
      plasma: NO_CURRENT,
      router: YES,
    },
  },
  {
    id: 'birch-plywood',
    name: 'Birch plywood',
    family: 'wood',
    sentence: 'Cheap for a handful of heads; drinks paint and grows ragged. Paint only.',
    densityKgM3: { value: 690, source: 'two plywood data sheets, 640 to 710 by thickness' },
    elastic: BIRCH_PLYWOOD,
    thicknesses: sheets(undefined, [], [3, 4, 6.5, 9]),
    torch: never('woodTorch'),
    processes: {
      'fibre-laser': NO_FIBRE,
      'co2-laser': YES,
      'water-jet': poor('waterSwells'),
      plasma: NO_CURRENT,
      router: YES,
    },
  },
  {
    id: 'pvc',
    name: 'PVC (vinyl) sheet',
    family: 'plastic',
    sentence: 'Listed so that nobody puts it under a laser by mistake: it gives off hydrogen chloride. Paint only.',
    densityKgM3: { value: 1400, source: 'from memory, 1350 to 1450' },
    elastic: PVC,
    thicknesses: sheets(undefined, [], [1, 2, 3]),
    torch: never('pvcTorch'),
    processes: {
      'fibre-laser': never('pvcLaser'),
      'co2-laser': never('pvcLaser'),
      'water-jet': YES,
      plasma: NO_CURRENT,
      router: YES,
    },
  },
];

/** Where the lists of usual thicknesses come from. */
export const THICKNESS_SOURCE = COMMON_PRACTICE;

export function materialById(id: string): Material | undefined {
  return MATERIALS.find((m) => m.id === id);
}

/** How well a process cuts a material. */
export function processFit(material: Material, processId: string): Fit {
  return material.processes[processId] ?? never('neverTried');
}

/** Gauges and metric sheets together, thinnest first. */
function sheets(
  system: GaugeSystem | undefined,
  gauges: readonly number[],
  metric: readonly number[],
): SheetThickness[] {
  const out: SheetThickness[] = metric.map((mm) => ({ mm, label: `${mm} mm` }));
  for (const gauge of gauges) {
    const mm = system && gaugeMm(system, gauge);
    if (mm !== undefined) out.push({ mm, label: `${gauge} ga` });
  }
  return out.sort((a, b) => a.mm - b.mm);
}
