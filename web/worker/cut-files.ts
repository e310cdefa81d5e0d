import { cutListCsv } from '../../geometry/files/job/cut-list.ts';
import { writeJobDxf } from '../../geometry/files/job/dxf-job.ts';
import type { Job } from '../../geometry/files/job/job.ts';
import type { LineWishes } from '../../geometry/files/job/job-lines.ts';
import type { JobFile } from '../../geometry/files/job/job-files.ts';
import { LINE_SIZES } from '../../geometry/files/job/line-sizes.ts';
import { stemOfSheet } from '../../geometry/files/job/job-stem.ts';
import { writeJobSvg } from '../../geometry/files/job/svg-job.ts';
import type { FileWishes, WantedJobFile } from './cut-api.ts';
import { fetchPaperFonts } from './paper-fonts.ts';
import type { MadeFile } from './plate-api.ts';

/** One file of an order that is planned, or all of them in an archive with what else belongs to it. */
export async function jobFile(
  job: Job,
  wanted: WantedJobFile,
  { size, witness, moves, outdated }: FileWishes,
  others: readonly JobFile[],
): Promise<MadeFile> {
  const wishes: Omit<LineWishes, 'plate'> = {
    size: LINE_SIZES[size],
    witness,
    ...(moves && { moves }),
    ...(outdated.length > 0 && { outdated }),
  };
  if (wanted.kind === 'zip') {
    const { jobZip } = await import('../../geometry/files/job/job-files.ts');
    return fileOf(await jobZip(job, wishes, await fetchPaperFonts(), others), 'application/zip');
  }
  const sheet = job.sheets[wanted.sheet];
  if (!sheet) throw new RangeError(`there is no sheet ${wanted.sheet + 1}`);
  const own = wanted.plate ? { ...wishes, plate: wanted.plate } : wishes;
  const stem = stemOfSheet(job, wanted.sheet, own);
  const text = (name: string, type: string, content: string): MadeFile =>
    fileOf({ name, bytes: new TextEncoder().encode(content) }, type);
  if (wanted.kind === 'list-csv') return text(`${stem}-cut-list.csv`, 'text/csv', cutListCsv(sheet, job.designs));
  if (wanted.kind === 'list-pdf') {
    const { writeCutList } = await import('../../geometry/files/job/cut-list-pdf.ts');
    const bytes = await writeCutList(sheet, job.designs, await fetchPaperFonts(), outdated);
    return fileOf({ name: `${stem}-cut-list.pdf`, bytes }, 'application/pdf');
  }
  const name = `${stem}.${wanted.kind}`;
  return wanted.kind === 'dxf'
    ? text(name, 'image/vnd.dxf', writeJobDxf(sheet, job.designs, own))
    : text(name, 'image/svg+xml', writeJobSvg(sheet, job.designs, own));
}

function fileOf({ name, bytes }: JobFile, type: string): MadeFile {
  return { name, type, bytes: bytes.slice() };
}
