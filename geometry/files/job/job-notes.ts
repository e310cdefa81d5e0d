import { showFingerprint } from '../../design/show-fingerprint.ts';
import { designOfPlate, designsOn, sheetName, type JobDesign, type JobSheet } from './job.ts';
import type { LineWishes } from './job-lines.ts';

/** What a cut file of a sheet or of one plate on it says of itself, line by line. */
export function jobNotes(job: JobSheet, designs: readonly JobDesign[], wishes: LineWishes): string[] {
  const { plate, size, outdated = [] } = wishes;
  const own = designOfPlate(plate, designs);
  const shown = plate ? (own ? [own] : []) : designsOn(job, designs);
  return [
    'Bridgehead cut file',
    plate ? `Plate ${plate.id} of ${sheetName(job)}` : sheetName(job),
    ...shown.map((d) => `${d.title}, ${d.plateName}. Fingerprint: ${showFingerprint(d.fingerprint)}. ${d.approval}`),
    ...(job.facts ?? []),
    ...outdated.map((sentence) => `OUTDATED: ${sentence}`),
    'Units: millimetres. Seen from the painted side. In the order of cutting.',
    size.kind === 'net'
      ? 'True size: kerf not taken off, small tabs and lead-ins left out.'
      : `Kerf taken off: the line is the middle of the cut${size.leadIns ? ', with lead-ins' : ''}.`,
    ...(wishes.moves ? ['MOVE and MOVE RAISED are not cut: the ways between cuts, raised over what may stand.'] : []),
    ...(size.kind === 'path' && !wishes.moves ? ['The machine chooses the ways between cuts.'] : []),
  ];
}
