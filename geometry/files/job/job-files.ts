import { zipOf } from '../../adapters/zip-stream.ts';
import { cutListCsv } from './cut-list.ts';
import { writeCutList } from './cut-list-pdf.ts';
import { writeJobDxf } from './dxf-job.ts';
import type { Job } from './job.ts';
import type { LineWishes } from './job-lines.ts';
import { stemOfOrder, stemOfSheet } from './job-stem.ts';
import type { PageFonts } from '../paper/pdf-page.ts';
import { writeJobSvg } from './svg-job.ts';

export interface JobFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** DXF, SVG and cut list (CSV, PDF) of every sheet of an order, in the order of the sheets. */
export async function jobFiles(
  { title, sheets, designs }: Job,
  wishes: Omit<LineWishes, 'plate'>,
  fonts: PageFonts,
): Promise<JobFile[]> {
  const files: JobFile[] = [];
  const text = new TextEncoder();
  for (const [i, job] of sheets.entries()) {
    const stem = stemOfSheet(title, i, wishes);
    files.push(
      { name: `${stem}.dxf`, bytes: text.encode(writeJobDxf(job, designs, wishes)) },
      { name: `${stem}.svg`, bytes: text.encode(writeJobSvg(job, designs, wishes)) },
      { name: `${stem}-cut-list.csv`, bytes: text.encode(cutListCsv(job, designs)) },
      { name: `${stem}-cut-list.pdf`, bytes: await writeCutList(job, designs, fonts, wishes.outdated) },
    );
  }
  return files;
}

/** The whole order in one archive, with what else belongs to it (designs, spec sheets); the same order, the same bytes. */
export async function jobZip(
  job: Job,
  wishes: Omit<LineWishes, 'plate'>,
  fonts: PageFonts,
  others: readonly JobFile[] = [],
): Promise<JobFile> {
  const files = [...(await jobFiles(job, wishes, fonts)), ...others];
  return { name: `${stemOfOrder(job.title, wishes)}.zip`, bytes: zipOf(files) };
}
