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
export async function jobFiles(whole: Job, wishes: Omit<LineWishes, 'plate'>, fonts: PageFonts): Promise<JobFile[]> {
  const { sheets, designs } = whole;
  const files: JobFile[] = [];
  const text = new TextEncoder();
  for (const [i, job] of sheets.entries()) {
    const stem = stemOfSheet(whole, i, wishes);
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
  const files = withOwnNames([...(await jobFiles(job, wishes, fonts)), ...others]);
  return { name: `${stemOfOrder(job, wishes)}.zip`, bytes: zipOf(files) };
}

/** Of names that meet all but the first get a number: one file would take the place of the other. */
export function withOwnNames(files: readonly JobFile[]): JobFile[] {
  const taken = new Set<string>();
  return files.map((file) => {
    let { name } = file;
    for (let n = 2; taken.has(name.toLowerCase()); n++) name = file.name.replace(/(\.[^.]*)?$/, `-${n}$1`);
    taken.add(name.toLowerCase());
    return { ...file, name };
  });
}
