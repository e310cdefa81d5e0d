import type { LineWishes } from '../files/job/job-lines.ts';

/** How the lines of a sheet are wanted: true size; kerf taken off; that with the ways in. */
export const LINE_SIZES = {
  net: { kind: 'net' },
  path: { kind: 'path', leadIns: false },
  leads: { kind: 'path', leadIns: true },
} as const satisfies Readonly<Record<string, LineWishes['size']>>;
