import { showFingerprint } from '../design/show-fingerprint.ts';
import type { PaperWords } from '../files/paper/paper-words.ts';
import { addPage, INK, type PdfPage, type TextStyle } from '../files/paper/pdf-page.ts';

/** Set a little further in than what production gets: it is to be looked at. */
const SIDE_MM = 20;
const TOP_MM = 30;
const FOOT_MM = 24;

export const TYPE = {
  eyebrow: { size: 7.5, bold: true, colour: INK.copper, spacing: 1.2 },
  heading: { size: 13, bold: true, tag: 'H2' },
  text: { size: 9.5 },
  quiet: { size: 8.5, colour: INK.quiet },
  label: { size: 7.5, colour: INK.quiet },
} as const satisfies Record<string, TextStyle>;

/** Pages that are filled from the top; what finds no room goes to the next. */
export interface Flow {
  readonly page: PdfPage;
  readonly words: PaperWords;
  readonly left: number;
  readonly width: number;
  /** Where the next thing begins, mm from the top. */
  y: number;
  /** Where a page must end. */
  readonly bottom: number;
  /** Begins a new page unless so much is free. */
  need(mm: number): void;
  newPage(): void;
  /** A heading that is not parted from the mm that follow it. */
  heading(text: string, mm: number): void;
  /** A paragraph; y is below it afterwards. */
  paragraph(text: string, style?: TextStyle): void;
}

const LEADING = 0.5;

export function createFlow(page: PdfPage, words: PaperWords, runningHead: string): Flow {
  const [left, width] = [SIDE_MM, page.widthMm - 2 * SIDE_MM];
  const flow: Flow = {
    page,
    words,
    left,
    width,
    y: TOP_MM,
    bottom: page.heightMm - FOOT_MM,
    need(mm) {
      if (flow.y + mm > flow.bottom) flow.newPage();
    },
    newPage() {
      addPage(page);
      page.tags.ornament(() => page.line(runningHead, left, 16, width, TYPE.label));
      page.rule(left, 19, left + width, 19);
      flow.y = TOP_MM;
    },
    heading(text, mm) {
      flow.need(12 + mm);
      page.line(text, left, flow.y + 4, width, TYPE.heading);
      flow.y += 11;
    },
    paragraph(text, style = TYPE.text) {
      const leading = style.size * LEADING;
      const rows = page.rows(text, width, style);
      flow.need(rows * leading);
      page.block(text, left, flow.y + style.size * 0.25, width, rows, leading, style);
      flow.y += rows * leading;
    },
  };
  return flow;
}

/** Page numbers and whose paper it is, once all pages are there. */
export function footDrawer(
  page: PdfPage,
  words: PaperWords,
  whose: string,
  fingerprint: string,
): (n: number, of: number) => void {
  return (number, of) => {
    const [left, width, y] = [SIDE_MM, page.widthMm - 2 * SIDE_MM, page.heightMm - 11];
    page.rule(left, y - 4.5, left + width, y - 4.5);
    page.tags.ornament(() => {
      page.line(whose, left, y, width * 0.6, TYPE.label);
      const right = `${showFingerprint(fingerprint)}  ·  ${words.say('paper.pageOf', { number, of })}`;
      page.line(right, left + width * 0.6, y, width * 0.4, { ...TYPE.label, align: 'right' });
    });
  };
}
