import { writeJobDxf } from '../../../geometry/files/job/dxf-job.ts';
import type { LineWishes } from '../../../geometry/files/job/job-lines.ts';
import { threePlateJob } from '../../files/job-set-up.ts';
import { ezdxfVersion, readWithEzdxf } from '../../readers/ezdxf-reader.ts';
import type { Claim } from '../claim.ts';

/** Files of a whole sheet, read by somebody else's reader. */
export const SHEET_FILE_CLAIMS: readonly Claim[] = [
  {
    name: 'ezdxf-clean',
    wanted: '0 errors in files of a sheet and of each of its plates, net and by paths',
    measure() {
      if (ezdxfVersion() === undefined) {
        return Promise.resolve({ value: 'not measured here: no python3-ezdxf', unit: '', ok: true });
      }
      const { sheets, designs } = threePlateJob();
      const wishes = (plate?: LineWishes['plate']): LineWishes[] => [
        { size: { kind: 'net' }, witness: false, ...(plate && { plate }) },
        { size: { kind: 'path', leadIns: false }, witness: false, ...(plate && { plate }) },
        { size: { kind: 'path', leadIns: true }, witness: true, ...(plate && { plate }) },
      ];
      const read = sheets.flatMap((job) =>
        [undefined, ...job.sheet.plates].flatMap((plate) =>
          wishes(plate).map((wish) => readWithEzdxf(writeJobDxf(job, designs, wish))),
        ),
      );
      const errors = read.reduce((sum, file) => sum + file.errors + file.fixes, 0);
      return Promise.resolve({
        value: errors,
        unit: `errors in ${read.length} files`,
        ok: errors === 0 && read.length > 0,
      });
    },
  },
];
