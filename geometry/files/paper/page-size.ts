/** Paper that documents are set on. */
export type PaperName = 'a4' | 'letter';

export interface PageSize {
  readonly widthMm: number;
  readonly heightMm: number;
  /** What office printers leave free, and some air. */
  readonly marginMm: number;
}

/** A4: ISO 216. Letter: 8.5 in by 11 in (ANSI Y14.1, size A). */
export const PAPERS: Readonly<Record<PaperName, PageSize>> = {
  a4: { widthMm: 210, heightMm: 297, marginMm: 16 },
  letter: { widthMm: 215.9, heightMm: 279.4, marginMm: 16 },
};
