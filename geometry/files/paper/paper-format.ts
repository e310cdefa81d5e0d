import type { Speak } from '../../sentences/speak-from.ts';
import type { Tongue } from '../../sentences/written-number.ts';
import type { PaperName } from './page-size.ts';

/** How a document is written: on which paper, in which language, by which words. */
export interface PaperFormat {
  readonly page: PaperName;
  readonly language: Tongue;
  /** Absent: English. Other languages: speakFrom(book, language). */
  readonly speak?: Speak;
}
