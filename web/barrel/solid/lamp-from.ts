/** The lamp hangs to the upper left, before the barrel; not of length 1. */
export const LAMP_FROM = [-0.5, 0.58, 0.64] as const;
