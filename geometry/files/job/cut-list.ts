import type { CutPass } from '../../cutplan/sheet-plan.ts';
import { showFingerprint } from '../../design/show-fingerprint.ts';
import { contourLengthMm } from '../../measure/arc.ts';
import type { Point } from '../../shapes.ts';
import { type Cell, CSV_BEGIN, csvLine } from '../csv.ts';
import { designOfPlate, type JobDesign, type JobSheet, passName } from './job.ts';

/** One cut of a sheet, in its turn. */
export interface CutListRow {
  /** From 1, in the order of cutting; the same order as the entities of the sheet's file. */
  readonly number: number;
  readonly kind: string;
  readonly plate: string;
  readonly design: string;
  readonly word: string;
  /** Along the middle of the cut, lead-ins and tabs left out. */
  readonly lengthMm: number;
  /** Where it is pierced, from the lower left corner of the sheet. */
  readonly pierce: Point;
  /** As it is shown. */
  readonly fingerprint: string;
}

export function cutList({ sheet, plan }: JobSheet, designs: readonly JobDesign[]): CutListRow[] {
  const plates = new Map(sheet.plates.map((p) => [p.id, p]));
  return plan.passes.map((pass, i) => {
    const design = designOfPlate(plates.get(pass.plate), designs);
    return {
      number: i + 1,
      kind: passName(pass),
      plate: pass.plate,
      design: design ? `${design.title}, ${design.plateName}` : '',
      word: wordOf(pass),
      lengthMm: contourLengthMm(pass.path) - tabsMm(pass),
      pierce: pass.pierce,
      fingerprint: showFingerprint(design?.fingerprint ?? ''),
    };
  });
}

const COLUMNS = ['number', 'kind', 'plate', 'design', 'word', 'length mm', 'pierce x mm', 'pierce y mm', 'fingerprint'];

/** The cut list of a sheet as CSV (RFC 4180), for machines and spreadsheets. */
export function cutListCsv(job: JobSheet, designs: readonly JobDesign[]): string {
  const rows = cutList(job, designs).map((r): Cell[] => [
    r.number,
    r.kind,
    r.plate,
    r.design,
    r.word,
    r.lengthMm,
    r.pierce.x,
    r.pierce.y,
    r.fingerprint,
  ]);
  return `${CSV_BEGIN}${[COLUMNS, ...rows].map(csvLine).join('')}`;
}

/** Without the plate it stands in; nothing for what belongs to no word: rims, marks, and what comes after a colon. */
function wordOf({ word, plate, kind }: CutPass): string {
  if (kind !== 'opening' || word.includes('/:')) return '';
  return word.startsWith(`${plate}/`) ? word.slice(plate.length + 1) : word;
}

function tabsMm({ tabsMm: tabs }: CutPass): number {
  return (tabs ?? []).reduce((sum, t) => sum + t.toMm - t.fromMm, 0);
}
