import type { PaperWords } from './paper-words.ts';
import { asHeading } from './paper-words.ts';
import type { SpecFinding } from './spec-findings.ts';
import { INK, type PdfPage, type TextStyle } from './pdf-page.ts';

export const HEAD: TextStyle = { size: 7, bold: true, colour: INK.copper, spacing: 0.9, tag: 'H2' };
const SMALL: TextStyle = { size: 7.5 };
const SMALL_LEADING_MM = 3.35;

/** Where lists stand: they take the width of the page, and grow upwards. */
export interface ListArea {
  readonly page: PdfPage;
  readonly words: PaperWords;
  readonly left: number;
  readonly width: number;
}

/** Two columns, upwards from the bottom; returns their top. */
export function drawCautions(
  { page, words, left, width }: ListArea,
  cautions: readonly string[],
  bottom: number,
): number {
  const column = (width - 8) / 2;
  const style = { ...SMALL, size: 7 };
  const rows = cautions.map((text) => page.rows(text, column - 3, style));
  const total = rows.reduce((sum, n) => sum + n, 0);
  // The first column takes at least half of the lines.
  let split = 0;
  let first = 0;
  while (split < rows.length && first < total / 2) first += rows[split++]!;
  const high = Math.max(first, total - first) * SMALL_LEADING_MM;
  const top = bottom - high;
  page.line(asHeading(words.say('paper.takeCare')), left, top - 1.5, 60, HEAD);
  let y = top + 2.6;
  cautions.forEach((text, i) => {
    if (i === split) y = top + 2.6;
    const x = left + (i < split ? 0 : column + 8);
    page.tags.ornament(() => page.line('–', x, y, 3, style));
    page.block(text, x + 3, y, column - 3, rows[i]!, SMALL_LEADING_MM, style);
    y += rows[i]! * SMALL_LEADING_MM;
  });
  return top - 4;
}

/** So many lines of findings are shown, whatever is left for the drawing: the worst one, and how many more there are. */
const LEAST_LINES = 5;

/** Worst first, upwards from bottom, never above highest; returns their top. */
export function drawFindings(
  { page, words, left, width }: ListArea,
  findings: readonly SpecFinding[],
  bottom: number,
  highest: number,
): number {
  const texts = findings.map((f) => {
    const plates = f.plates.map((name) => page.fit(name, 30, SMALL)).join(', ');
    return plates === '' ? f.sentence : words.say('paperSheet.on', { plates, finding: f.sentence });
  });
  const style = { ...SMALL, size: 8 };
  const leading = 3.6;
  const most = Math.max(LEAST_LINES, Math.floor((bottom - highest) / leading) - 1);
  const shown: { text: string; rows: number; severity: SpecFinding['severity'] }[] = [];
  let used = 0;
  for (const [i, text] of texts.entries()) {
    const rows = Math.min(3, page.rows(text, width - 24, { ...style, bold: findings[i]!.severity === 'stop' }));
    const restNeedsLine = i < texts.length - 1 ? 1 : 0;
    if (used + rows + restNeedsLine > most) break;
    shown.push({ text, rows, severity: findings[i]!.severity });
    used += rows;
  }
  const rest = texts.length - shown.length;
  const lines = used + (rest > 0 || texts.length === 0 ? 1 : 0);
  const top = bottom - lines * leading;
  page.line(asHeading(words.say('paper.findings')), left, top - 1.5, 60, HEAD);
  let y = top + 3;
  if (texts.length === 0) page.line(words.say('paper.none'), left, y, width, style);
  for (const { text, rows, severity } of shown) {
    const bold = severity === 'stop';
    page.line(words.say(SAYS[severity]), left, y, 22, { ...style, bold, colour: bold ? INK.char : INK.quiet });
    page.block(text, left + 24, y, width - 24, rows, leading, { ...style, bold });
    y += rows * leading;
  }
  if (rest > 0) {
    page.line(words.say('paperSheet.more', { count: rest }), left + 24, y, width - 24, { ...style, colour: INK.quiet });
  }
  return top - 4;
}

const SAYS = { stop: 'paperSheet.doNotCut', look: 'paperSheet.lookAt', note: 'paperSheet.toKnow' } as const;
