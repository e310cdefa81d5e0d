import { COMMON_PRACTICE, type Sourced } from './sourced.ts';

/** How a material bends, cold and under the torch; MPa. */
export interface Elastic {
  readonly youngMPa: Sourced;
  /** Poisson's ratio; the shear modulus follows from it where none is given. */
  readonly poisson: Sourced;
  readonly shearMPa?: Sourced;
  /** Stress from which it stays bent (0.2 % proof), cold, as it is touched; absent where none worth a rule was found. */
  readonly yieldMPa?: Sourced;
  /** Softer at the temperature that a bridge may reach under a hand torch; absent where no torch may come near. */
  readonly hot?: { readonly atC: number; readonly youngMPa: Sourced };
}

/** What of it counts for one stock and use. */
export interface Stiffness {
  readonly youngMPa: number;
  readonly shearMPa: number;
  readonly yieldMPa?: number;
  readonly densityKgM3: number;
  /** Farthest that an island may give under a touch of TOUCH_N. */
  readonly touchLimitMm: number;
  /** Farthest that it may hang down by its own weight when the rim lies flat. */
  readonly sagLimitMm: number;
  /** Touch that islands are judged by, N. */
  readonly touchN: number;
}

/** A finger or a cloth that wipes: a firm touch. */
export const TOUCH_N: Sourced = { value: 5, source: COMMON_PRACTICE };

/**
 * An island may give by one thickness, since from there on its edge stands clear above the sheet beside it: it catches
 * the brush and paint creeps under. Never by more than 1.5 mm, which a hand feels as loose whatever the sheet is.
 */
export const TOUCH_THICKNESSES: Sourced = { value: 1, source: COMMON_PRACTICE };
export const TOUCH_MM: Sourced = { value: 1.5, source: COMMON_PRACTICE };
/** Plastic springs back from what would leave a metal bar bent, so it may give so many times more. */
export const SPRINGY: Sourced = { value: 3, source: COMMON_PRACTICE };
/** About the gap below which sprayed paint keeps a clean edge. */
export const SAG_MM: Sourced = { value: 0.3, source: COMMON_PRACTICE };

const EN_10088_1 = 'EN 10088-1 as reproduced';
const POISSON_METAL: Sourced = { value: 0.3, source: 'EN 1993-1-1, 3.2.6, from memory' };

export const STAINLESS_304: Elastic = {
  youngMPa: { value: 200_000, source: EN_10088_1 },
  poisson: POISSON_METAL,
  yieldMPa: { value: 230, source: 'EN 10088-2 for 1.4301 cold rolled, from memory' },
  hot: {
    atC: 500,
    youngMPa: { value: 165_000, source: `${EN_10088_1}, 500 °C` },
  },
};
export const STAINLESS_316: Elastic = {
  youngMPa: { value: 200_000, source: EN_10088_1 },
  poisson: POISSON_METAL,
  yieldMPa: { value: 240, source: 'EN 10088-2 for 1.4401 cold rolled, from memory' },
  hot: {
    atC: 500,
    youngMPa: { value: 165_000, source: `${EN_10088_1} for 1.4301 at 500 °C, taken for 1.4401 too` },
  },
};
export const STAINLESS_430: Elastic = {
  youngMPa: { value: 220_000, source: 'EN 10088-1 for 1.4016, from memory' },
  poisson: POISSON_METAL,
  yieldMPa: { value: 260, source: 'EN 10088-2 for 1.4016 cold rolled, from memory' },
  hot: {
    atC: 500,
    youngMPa: { value: 165_000, source: 'as for 1.4301 at 500 °C, for want of its own: on the safe side' },
  },
};
export const MILD_STEEL: Elastic = {
  youngMPa: { value: 210_000, source: 'EN 1993-1-1, 3.2.6, from memory' },
  poisson: POISSON_METAL,
  yieldMPa: { value: 235, source: 'EN 10025-2 S235, from memory' },
  hot: {
    atC: 500,
    youngMPa: { value: 126_000, source: 'EN 1993-1-2 Table 3.1: 0.60 of the cold value at 500 °C, from memory' },
  },
};

const HOT_ALUMINIUM: Sourced = { value: 47_600, source: 'EN 1999-1-2 Table 2 at 300 °C, from memory' };
const POISSON_ALUMINIUM: Sourced = { value: 0.33, source: 'from memory; EN 1999-1-1 takes 0.3' };
export const ALUMINIUM_5052: Elastic = {
  youngMPa: { value: 70_300, source: 'Aluminum Association value in two service-centre tables' },
  poisson: POISSON_ALUMINIUM,
  yieldMPa: { value: 193, source: 'Aluminum Association typical value for H32, from memory' },
  hot: {
    atC: 300,
    youngMPa: HOT_ALUMINIUM,
  },
};
export const ALUMINIUM_6061: Elastic = {
  youngMPa: { value: 68_900, source: 'Aluminum Association value in two service-centre tables' },
  poisson: POISSON_ALUMINIUM,
  yieldMPa: { value: 276, source: 'Aluminum Association typical value for T6, from memory' },
  hot: {
    atC: 300,
    youngMPa: HOT_ALUMINIUM,
  },
};

const POISSON_PLASTIC: Sourced = { value: 0.4, source: 'from memory, 0.37 to 0.46' };
export const POLYCARBONATE: Elastic = {
  youngMPa: { value: 2_200, source: 'data sheets, 2.0 to 2.4 GPa' },
  poisson: POISSON_PLASTIC,
};
export const HDPE: Elastic = {
  youngMPa: { value: 1_000, source: 'thermal-analysis poster, 0.6 to 1.4 GPa' },
  poisson: POISSON_PLASTIC,
};
export const PVC: Elastic = {
  youngMPa: { value: 3_000, source: 'from memory, 2.4 to 4.1 GPa' },
  poisson: POISSON_PLASTIC,
};
export const BIRCH_PLYWOOD: Elastic = {
  youngMPa: { value: 3_000, source: 'two plywood data sheets: at least 3 GPa across the grain, 6 along it' },
  poisson: { value: 0.3, source: 'not used: the shear modulus is given' },
  shearMPa: { value: 600, source: "plywood makers' handbooks, panel shear about 0.6 GPa, from memory" },
};
