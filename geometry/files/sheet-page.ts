import PDFDocument from 'pdfkit';
import { unpackWoff } from '../adapters/woff.ts';
import { oneLine } from './plain-text.ts';

/** Colours of the house on white paper; each is also told apart by its grey. */
export const INK = {
  char: '#26211d',
  quiet: '#6f675f',
  hair: '#cfc9bf',
  metal: '#d3d1cc',
  copper: '#a4562a',
  paper: '#ffffff',
};

/** A4 (ISO 216), millimetres, and the margin that office printers leave free. */
export const PAGE = { widthMm: 210, heightMm: 297, marginMm: 16 };

/** 1 pt = 1/72 in (ISO 32000-1, default user space). */
const PT_PER_MM = 72 / 25.4;

export interface TextStyle {
  readonly size: number;
  readonly bold?: boolean;
  readonly colour?: string;
  readonly align?: 'left' | 'right' | 'centre';
  /** Extra space between letters, pt. */
  readonly spacing?: number;
}

/**
 * One A4 page in millimetres from the upper left corner. Text never wraps or breaks a page by itself: lines are laid by
 * this file, cut with an ellipsis where the room ends.
 */
export interface SheetPage {
  readonly doc: PDFKit.PDFDocument;
  /** One line whose capitals stand on y; returns its width. What is wider than widthMm ends in an ellipsis. */
  line(text: string, x: number, y: number, widthMm: number, style: TextStyle): number;
  /** As many lines as fit into rows; returns how many were used. */
  block(text: string, x: number, y: number, widthMm: number, rows: number, leadingMm: number, style: TextStyle): number;
  widthMm(text: string, style: TextStyle): number;
  /** The text, or its beginning and an ellipsis. */
  fit(text: string, widthMm: number, style: TextStyle): string;
  rule(x1: number, y1: number, x2: number, y2: number, thickMm?: number, colour?: string): void;
  rows(text: string, widthMm: number, style: TextStyle): number;
}

/** Font files, TTF, OTF or WOFF. */
export interface SheetFonts {
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
}

/** A file without a clock: the same design gives the same bytes. */
const FIXED_DATE = new Date(Date.UTC(2000, 0, 1));

export function createPage(title: string, subject: string, fonts: SheetFonts): SheetPage {
  const doc = new PDFDocument({
    size: [PAGE.widthMm * PT_PER_MM, PAGE.heightMm * PT_PER_MM],
    margin: 0,
    lang: 'en',
    displayTitle: true,
    pdfVersion: '1.7',
    // No font to begin with: the browser's build lacks the default, and one given here would be read anew at every change.
    font: '',
    info: { Title: title, Subject: subject, Creator: 'Bridgehead', Producer: 'Bridgehead', CreationDate: FIXED_DATE },
  });
  doc.registerFont('regular', unpacked(fonts.regular));
  doc.registerFont('bold', unpacked(fonts.bold));
  doc.scale(PT_PER_MM);

  const setType = (style: TextStyle) => doc.font(style.bold ? 'bold' : 'regular').fontSize(style.size / PT_PER_MM);
  const spacing = (style: TextStyle) => (style.spacing ?? 0) / PT_PER_MM;
  const widthMm = (text: string, style: TextStyle) => {
    setType(style);
    return doc.widthOfString(text, { characterSpacing: spacing(style) });
  };
  const fit = (text: string, room: number, style: TextStyle) => {
    if (widthMm(text, style) <= room) return text;
    const letters = [...text];
    const shortened = (keep: number) => `${letters.slice(0, keep).join('').trimEnd()}…`;
    const keep = most(letters.length - 1, (n) => widthMm(shortened(n), style) <= room);
    return keep === 0 ? '' : shortened(keep);
  };
  const draw = (text: string, x: number, y: number, room: number, style: TextStyle) => {
    const shown = fit(text, room, style);
    const wide = widthMm(shown, style);
    const left = style.align === 'right' ? x + room - wide : style.align === 'centre' ? x + (room - wide) / 2 : x;
    setType(style);
    if (shown !== '') {
      doc.fillColor(style.colour ?? INK.char);
      doc.text(shown, left, y, { lineBreak: false, baseline: 'alphabetic', characterSpacing: spacing(style) });
    }
    return wide;
  };
  const wrap = (text: string, room: number, style: TextStyle) => {
    const lines: string[] = [];
    let line = '';
    for (const word of text.split(' ')) {
      const longer = line === '' ? word : `${line} ${word}`;
      if (widthMm(longer, style) <= room) {
        line = longer;
        continue;
      }
      if (line !== '') lines.push(line);
      line = word;
      // A word wider than the column is broken where the column ends.
      while (widthMm(line, style) > room && line.length > 1) {
        const letters = [...line];
        const keep = Math.max(
          1,
          most(letters.length - 1, (n) => widthMm(letters.slice(0, n).join(''), style) <= room),
        );
        lines.push(letters.slice(0, keep).join(''));
        line = letters.slice(keep).join('');
      }
    }
    if (line !== '') lines.push(line);
    return lines;
  };
  const shown = (text: string) => drawable(doc, oneLine(text, 4000));
  return {
    doc,
    line: (text, x, y, room, style) => draw(shown(text), x, y, room, style),
    block(text, x, y, room, rows, leadingMm, style) {
      const lines = wrap(shown(text), room, style);
      const used = Math.min(rows, lines.length);
      for (let i = 0; i < used; i++) {
        const cut = i === rows - 1 && lines.length > rows;
        // The last line that fits takes the rest, so that it ends in the ellipsis.
        draw(cut ? lines.slice(i).join(' ') : lines[i]!, x, y + i * leadingMm, room, style);
      }
      return used;
    },
    rows: (text, room, style) => wrap(shown(text), room, style).length,
    widthMm: (text, style) => widthMm(shown(text), style),
    fit: (text, room, style) => fit(shown(text), room, style),
    rule(x1, y1, x2, y2, thickMm = 0.15, colour = INK.hair) {
      doc.lineWidth(thickMm).strokeColor(colour).moveTo(x1, y1).lineTo(x2, y2).stroke();
    },
  };
}

/** A web font is unpacked once here: left packed, its tables would be unpacked anew for every letter. */
function unpacked(font: Uint8Array): Uint8Array {
  const isWoff = font[0] === 0x77 && font[1] === 0x4f && font[2] === 0x46 && font[3] === 0x46;
  return (isWoff ? unpackWoff(font) : undefined) ?? font;
}

/** A further page, drawn on from now on. */
export function addPage({ doc }: SheetPage): void {
  doc.addPage({ size: [PAGE.widthMm * PT_PER_MM, PAGE.heightMm * PT_PER_MM], margin: 0 });
  doc.scale(PT_PER_MM);
}

/** The finished file. */
export function pageBytes(page: SheetPage): Promise<Uint8Array> {
  const { doc } = page;
  return new Promise((resolve, reject) => {
    const chunks: Uint8Array[] = [];
    doc.on('data', (chunk: Uint8Array) => chunks.push(chunk));
    doc.on('error', reject);
    doc.on('end', () => {
      const bytes = new Uint8Array(chunks.reduce((sum, c) => sum + c.length, 0));
      let at = 0;
      for (const chunk of chunks) {
        bytes.set(chunk, at);
        at += chunk.length;
      }
      resolve(bytes);
    });
    doc.end();
  });
}

/** Largest number up to limit that fits, 0 for none; what fits must fit for all smaller numbers too. */
function most(limit: number, fits: (n: number) => boolean): number {
  let [low, high] = [0, limit];
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (fits(middle)) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** Letters that the sheet's face lacks: their base letter where it has that, otherwise a question mark rather than a blank box. */
function drawable(doc: PDFKit.PDFDocument, text: string): string {
  doc.font('regular');
  // The opened face behind pdfkit's own wrapper; its types do not name it.
  const face = (doc as unknown as { _font: { font: { hasGlyphForCodePoint(code: number): boolean } } })._font.font;
  const has = (letter: string) => face.hasGlyphForCodePoint(letter.codePointAt(0)!);
  return [...text]
    .map((letter) => {
      if (has(letter)) return letter;
      const base = [...letter.normalize('NFKD')].filter(has).join('');
      return base === '' ? '?' : base;
    })
    .join('');
}
