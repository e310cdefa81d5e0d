import { fingerprintOf } from '../../geometry/design/fingerprint.ts';
import { printInName } from '../../geometry/design/show-fingerprint.ts';
import type { Design } from '../../geometry/design/schema.ts';
import { ownRules } from '../../geometry/stock/own-rules.ts';
import type { StockBook } from '../../geometry/stock/stock-book.ts';
import { designText } from '../../geometry/design/write-design.ts';
import { fileStem } from '../worker/file-stem.ts';
import { saveFile } from '../page/save-file.ts';

/** Saves the design document itself: the same file the headless command reads. */
export function saveDesignFile(design: Design, book: StockBook): void {
  saveFile({
    name: `${fileStem(design.title)}-${printInName(fingerprintOf(design, ownRules(design, book)))}.json`,
    type: 'application/json',
    bytes: new TextEncoder().encode(designText(design)),
  });
}
