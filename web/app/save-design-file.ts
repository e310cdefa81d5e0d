import { shortFingerprint } from '../../geometry/design/fingerprint.ts';
import type { Design } from '../../geometry/design/schema.ts';
import { designText } from '../../geometry/design/write-design.ts';
import { fileStem } from '../worker/file-stem.ts';
import { saveFile } from './save-file.ts';

/** Saves the design document itself: the same file the headless command reads. */
export function saveDesignFile(design: Design): void {
  saveFile({
    name: `${fileStem(design.title)}-${shortFingerprint(design)}.json`,
    type: 'application/json',
    bytes: new TextEncoder().encode(designText(design)),
  });
}
