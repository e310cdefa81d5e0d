import PDFDocument from 'pdfkit';
import { unpackWoff } from '../../adapters/unpack-woff.ts';
import { zlibOf } from '../../adapters/zlib.ts';
import { replaceMissingLetters, fitText, wrapText } from './lay-text.ts';
import { PAPERS, type PageSize } from './page-size.ts';
import { createTags, type Tags } from './page-tags.ts';

/** Colours of the house on white paper; each is also told apart by its grey. */
export const INK = {
  char: '#26211d',
  quiet: '#6f675f',
  hair: '#cfc9bf',
  metal: '#d3d1cc',
  copper: '#a4562a',
  paper: '#ffffff',
};

/** 1 pt = 1/72 in (ISO 32000-1, default user space). */
const PT_PER_MM = 72 / 25.4;

export interface TextStyle {
  readonly size: number;
  readonly bold?: boolean;
  readonly colour?: string;
  readonly align?: 'left' | 'right' | 'centre';
  /** Extra space between letters, pt. */
  readonly spacing?: number;
  /** What it is to those who have the page read to them (ISO 32000-1, 14.8.4); a paragraph, if nothing else. */
  readonly tag?: 'H1' | 'H2' | 'P' | 'TH' | 'TD';
}

/**
 * Pages in millimetres from the upper left corner. Text never wraps or breaks a page by itself: lines are laid by this
 * file, cut with an ellipsis where the room ends. Every text is tagged, every rule is an ornament.
 */
export interface PdfPage extends PageSize {
  readonly doc: PDFKit.PDFDocument;
  readonly tags: Tags;
  /** One line whose capitals stand on y; returns its width. What is wider than widthMm ends in an ellipsis. */
  line(text: string, x: number, y: number, widthMm: number, style: TextStyle): number;
  /** As many lines as fit into rows; returns how many were used. */
  block(text: string, x: number, y: number, widthMm: number, rows: number, leadingMm: number, style: TextStyle): number;
  widthOf(text: string, style: TextStyle): number;
  /** The text, or its beginning and an ellipsis. */
  fit(text: string, widthMm: number, style: TextStyle): string;
  rule(x1: number, y1: number, x2: number, y2: number, thickMm?: number, colour?: string): void;
  rows(text: string, widthMm: number, style: TextStyle): number;
  /** Whether the faces of the page draw this letter as it is. */
  has(letter: string): boolean;
}

/** Font files, TTF, OTF or WOFF. */
export interface PageFonts {
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
  /** The same face where the first two have no letter (`Ł`); only embedded where it is needed. */
  readonly more?: { readonly regular: Uint8Array; readonly bold: Uint8Array };
}

export interface PageOptions {
  readonly title: string;
  readonly subject: string;
  readonly fonts: PageFonts;
  /** Absent: A4. */
  readonly size?: PageSize;
  /** BCP 47; absent: English. */
  readonly language?: string;
}

/** A file without a clock: the same design gives the same bytes. */
const FIXED_DATE = new Date(Date.UTC(2000, 0, 1));

export function createPage({ title, subject, fonts, size = PAPERS.a4, language = 'en' }: PageOptions): PdfPage {
  const doc = new PDFDocument({
    autoFirstPage: false,
    bufferPages: true,
    tagged: true,
    lang: language,
    displayTitle: true,
    pdfVersion: '1.7',
    // No font to begin with: the browser's build lacks the default, and one given here would be read anew at every change.
    font: '',
    info: { Title: title, Subject: subject, Creator: 'Bridgehead', Producer: 'Bridgehead', CreationDate: FIXED_DATE },
  });
  packAlike(doc);
  doc.registerFont('regular', unpackFont(fonts.regular));
  doc.registerFont('bold', unpackFont(fonts.bold));
  const tags = createTags(doc);

  const hasMore = fonts.more !== undefined;
  if (fonts.more) {
    doc.registerFont('more regular', unpackFont(fonts.more.regular));
    doc.registerFont('more bold', unpackFont(fonts.more.bold));
  }
  const inMore = (letter: string) =>
    hasMore && !hasGlyph(doc, 'regular', letter) && hasGlyph(doc, 'more regular', letter);
  const has = (letter: string) => hasGlyph(doc, 'regular', letter) || inMore(letter);

  const setType = (style: TextStyle, more: boolean) =>
    doc.font(`${more ? 'more ' : ''}${style.bold ? 'bold' : 'regular'}`).fontSize(style.size / PT_PER_MM);
  const spacing = (style: TextStyle) => (style.spacing ?? 0) / PT_PER_MM;
  const runWidth = (run: Run, style: TextStyle) => {
    setType(style, run.more);
    return doc.widthOfString(run.text, { characterSpacing: spacing(style) });
  };
  const measure = (style: TextStyle) => (text: string) => {
    const runs = splitRuns(text, inMore);
    return runs.reduce((sum, run) => sum + runWidth(run, style), spacing(style) * Math.max(0, runs.length - 1));
  };
  const draw = (text: string, x: number, y: number, room: number, style: TextStyle) => {
    const width = measure(style);
    const shown = fitText(text, room, width);
    const wide = width(shown);
    let at = style.align === 'right' ? x + room - wide : style.align === 'centre' ? x + (room - wide) / 2 : x;
    doc.fillColor(style.colour ?? INK.char);
    for (const run of splitRuns(shown, inMore)) {
      const next = at + runWidth(run, style) + spacing(style);
      doc.text(run.text, at, y, { lineBreak: false, baseline: 'alphabetic', characterSpacing: spacing(style) });
      at = next;
    }
    return wide;
  };
  const shown = (text: string) => replaceMissingLetters(text, has);
  const page: PdfPage = {
    ...size,
    doc,
    tags,
    line: (text, x, y, room, style) => tags.text(style.tag ?? 'P', () => draw(shown(text), x, y, room, style)),
    block(text, x, y, room, rows, leadingMm, style) {
      const lines = wrapText(shown(text), room, measure(style));
      const used = Math.min(rows, lines.length);
      tags.text(style.tag ?? 'P', () => {
        for (let i = 0; i < used; i++) {
          const cut = i === rows - 1 && lines.length > rows;
          // The last line that fits takes the rest, so that it ends in the ellipsis.
          draw(cut ? lines.slice(i).join(' ') : lines[i]!, x, y + i * leadingMm, room, style);
        }
      });
      return used;
    },
    rows: (text, room, style) => wrapText(shown(text), room, measure(style)).length,
    widthOf: (text, style) => measure(style)(shown(text)),
    fit: (text, room, style) => fitText(shown(text), room, measure(style)),
    rule(x1, y1, x2, y2, thickMm = 0.15, colour = INK.hair) {
      tags.ornament(() => doc.lineWidth(thickMm).strokeColor(colour).moveTo(x1, y1).lineTo(x2, y2).stroke());
    },
    has,
  };
  addPage(page);
  return page;
}

/** A further page, drawn on from now on. */
export function addPage({ doc, widthMm, heightMm }: PdfPage): void {
  doc.addPage({ size: [widthMm * PT_PER_MM, heightMm * PT_PER_MM], margin: 0 });
  doc.scale(PT_PER_MM);
}

/** Draws on every page there is, the first being number 1: what says how many there are is known last. */
export function onEveryPage(page: PdfPage, draw: (number: number, of: number) => void): void {
  const { start, count } = page.doc.bufferedPageRange();
  for (let i = 0; i < count; i++) {
    page.doc.switchToPage(start + i);
    draw(i + 1, count);
  }
}

export function pageBytes({ doc, tags }: PdfPage): Promise<Uint8Array> {
  tags.end();
  return new Promise((resolve, reject) => {
    const chunks: Uint8Array[] = [];
    doc.on('data', (chunk: Uint8Array) => chunks.push(chunk));
    doc.on('error', reject);
    doc.on('end', () => resolve(joinChunks(chunks)));
    doc.end();
  });
}

/** A web font is unpacked once here: left packed, its tables would be unpacked anew for every letter. */
function unpackFont(font: Uint8Array): Uint8Array {
  const isWoff = font[0] === 0x77 && font[1] === 0x4f && font[2] === 0x46 && font[3] === 0x46;
  return (isWoff ? unpackWoff(font) : undefined) ?? font;
}

function joinChunks(chunks: readonly Uint8Array[]): Uint8Array {
  const bytes = new Uint8Array(chunks.reduce((sum, c) => sum + c.length, 0));
  let at = 0;
  for (const chunk of chunks) {
    bytes.set(chunk, at);
    at += chunk.length;
  }
  return bytes;
}

function hasGlyph(doc: PDFKit.PDFDocument, name: string, letter: string): boolean {
  doc.font(name);
  // The opened face behind pdfkit's own wrapper; its types do not name it.
  const face = (doc as unknown as { _font: { font: { hasGlyphForCodePoint(code: number): boolean } } })._font.font;
  return face.hasGlyphForCodePoint(letter.codePointAt(0)!);
}

interface Run {
  readonly text: string;
  readonly more: boolean;
}

/** The text in runs that one file of the face draws. */
function splitRuns(text: string, inMore: (letter: string) => boolean): Run[] {
  const runs: { text: string; more: boolean }[] = [];
  for (const letter of text) {
    const more = inMore(letter);
    const last = runs[runs.length - 1];
    if (last?.more === more) last.text += letter;
    else runs.push({ text: letter, more });
  }
  return runs;
}

/** A part of the file as pdfkit keeps it until it is written. */
interface Part {
  compress: boolean;
  buffer: Uint8Array[];
  finalize(): void;
}

/** In Node pdfkit packs by the system's library, in browsers by another: the bytes would differ. */
function packAlike(doc: PDFKit.PDFDocument): void {
  const own = doc as unknown as { ref(data?: object): Part };
  const ref = own.ref.bind(doc);
  own.ref = (data) => {
    const part = ref(data);
    const finalize = part.finalize.bind(part);
    part.finalize = () => {
      if (part.compress && part.buffer.length > 0) part.buffer = [zlibOf(joinChunks(part.buffer))];
      part.compress = false;
      finalize();
    };
    return part;
  };
}
