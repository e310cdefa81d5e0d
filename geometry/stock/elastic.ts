/** How one stock bends in one use: what islands are judged by. */
export interface Stiffness {
  readonly youngMPa: number;
  readonly shearMPa: number;
  /** Stress from which it stays bent (0.2 % proof), cold, as it is touched; absent where none worth a rule was found. */
  readonly yieldMPa?: number;
  readonly densityKgM3: number;
  /** Farthest that an island may give under a touch of touchN. */
  readonly touchLimitMm: number;
  /** Farthest that it may hang down by its own weight when the rim lies flat. */
  readonly sagLimitMm: number;
  /** Touch that islands are judged by, N. */
  readonly touchN: number;
}
