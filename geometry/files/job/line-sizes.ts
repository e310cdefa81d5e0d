import type { LineWishes } from './job-lines.ts';

/** How the lines of a sheet are wanted: true size; kerf taken off; that with the ways in; all of a cut in one open line. */
export const LINE_SIZES = {
  net: { kind: 'net' },
  path: { kind: 'path', leadIns: false },
  leads: { kind: 'path', leadIns: true },
  joined: { kind: 'path', leadIns: true, joined: true },
} as const satisfies Readonly<Record<string, LineWishes['size']>>;
