import type { Claim } from './claim.ts';
import { DRIFT_CLAIMS } from './cut/drift.ts';
import { PATH_CLAIMS } from './cut/paths.ts';
import { SHEET_FILE_CLAIMS } from './cut/sheet-files.ts';
import { SHEET_CLAIMS } from './cut/sheets.ts';
import { SLUG_CLAIMS } from './cut/slugs.ts';
import { TIME_CLAIMS } from './cut/time.ts';

/** The cut: sheets, paths and heat, pieces cut free, drift, files, time. One file of claims in cut/ for each. */
export const claims: readonly Claim[] = [
  ...SHEET_CLAIMS,
  ...PATH_CLAIMS,
  ...SLUG_CLAIMS,
  ...DRIFT_CLAIMS,
  ...SHEET_FILE_CLAIMS,
  ...TIME_CLAIMS,
];
