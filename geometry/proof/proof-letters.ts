import { isText } from '../design/kinds.ts';
import type { Design } from '../design/schema.ts';
import type { Finding } from '../findings.ts';
import type { PaperWords } from '../files/paper/paper-words.ts';
import { INK, type TextStyle } from '../files/paper/pdf-page.ts';
import type { PlannedPlate } from '../files/paper/plate-drawing.ts';
import { isDay, weekdayOf } from '../sentences/calendar.ts';
import { capitalised } from '../sentences/make-say.ts';
import { findDates } from '../sentences/find-dates.ts';
import { type Flow, TYPE } from './flow.ts';

const CELL_MM = 6.2;
const LINE_MM = 8.2;
/** Room for the number of the text. */
const INDENT_MM = 18;
const TEXT: TextStyle = { size: 12, bold: true };
const TEXT_MM = 5.4;
const HINT: TextStyle = { size: 8.5, colour: INK.quiet };
const HINT_MM = 3.8;

/** One text of the design to be read for faults: its signs one by one, and what is said of it. */
export interface ReadText {
  readonly text: string;
  readonly signs: readonly string[];
  readonly hints: readonly string[];
}

/** Every lettered element in the design's order. A finding of lettering stands with the text that it is about. */
function textsToRead(design: Design, plates: readonly PlannedPlate[], words: PaperWords): ReadText[] {
  const found = new Map<string, Finding>();
  for (const { plate } of plates) {
    for (const finding of plate.findings) {
      if (isOfLettering(finding)) found.set(`${finding.code} ${finding.sentence}`, finding);
    }
  }
  return design.elements.flatMap((element) => {
    if (!isText(element)) return [];
    const said = [...found.values()]
      .filter((f) => f.elementIds.includes(element.id))
      .map((f) => (f.words ? capitalised(words.speak(f.words)) : f.sentence));
    return [{ text: element.text, signs: [...element.text], hints: [...said, ...daysIn(element.text, words)] }];
  });
}

/** Spelling, signs and dates, and letters that will not be there. */
function isOfLettering({ words }: Finding): boolean {
  const key = words?.key ?? '';
  return key.startsWith('lettering.') || key.startsWith('findings.missingGlyph');
}

/** Dates that can be read in one way only, with the day of the week that they fall on. */
function daysIn(text: string, words: PaperWords): string[] {
  return findDates(text).flatMap(({ text: written, readings, year }) => {
    const [reading] = readings;
    if (!reading || readings.length !== 1 || year === undefined || year.short) return [];
    const day = { year: year.value, ...reading };
    if (!isDay(day)) return [];
    const iso = [String(day.year).padStart(4, '0'), twoDigits(day.month), twoDigits(day.day)].join('-');
    const weekday = words.say(WEEKDAYS[weekdayOf(day)] ?? WEEKDAYS[0]);
    return [words.say('paperProof.dateIs', { written, weekday, iso })];
  });
}

/** From Sunday on. */
const WEEKDAYS = [
  'paperProof.weekday0',
  'paperProof.weekday1',
  'paperProof.weekday2',
  'paperProof.weekday3',
  'paperProof.weekday4',
  'paperProof.weekday5',
  'paperProof.weekday6',
] as const;

function twoDigits(value: number): string {
  return String(value).padStart(2, '0');
}

/** How high all texts stand, mm, in a column without page breaks. */
export function lettersMm(flow: Flow, design: Design, plates: readonly PlannedPlate[]): number {
  const heading = 12 + 8;
  return textsToRead(design, plates, flow.words).reduce((sum, text) => sum + shapeOf(flow, text).highMm, heading);
}

/** All texts, each with its signs apart from each other. */
export function drawLetters(flow: Flow, design: Design, plates: readonly PlannedPlate[]): void {
  const { words } = flow;
  flow.heading(words.say('paperProof.everyLetter'), 30);
  flow.paragraph(words.say('paperProof.everyLetterHow'), TYPE.quiet);
  flow.y += 4;
  const texts = textsToRead(design, plates, words);
  if (texts.length === 0) flow.paragraph(words.say('paperProof.noText'));
  texts.forEach((text, i) => drawText(flow, text, words.say('paperProof.textNumber', { number: i + 1 })));
}

/** Text and signs stand side by side where both have room, else the signs below. */
const TEXT_SHARE = 0.36;

interface TextShape {
  readonly x: number;
  readonly room: number;
  /** Where the signs begin, beside the text or below it. */
  readonly from: number;
  readonly isBeside: boolean;
  readonly lines: number;
  readonly rows: readonly (readonly string[])[];
  readonly hints: readonly string[];
  readonly highMm: number;
}

function shapeOf(flow: Flow, { text, signs, hints }: ReadText): TextShape {
  const { page, left, width } = flow;
  const [x, room] = [left + INDENT_MM, width - INDENT_MM];
  const beside = room * TEXT_SHARE;
  const fits = signs.length * CELL_MM <= room - beside && page.widthOf(text, TEXT) <= beside - 3;
  const isBeside = fits && !signs.includes('\n');
  const lines = page.rows(text, room, TEXT);
  const rows = rowsOf(signs, Math.floor(room / CELL_MM));
  const all = [...hints, ...codesOf(flow, signs)];
  const hintMm = all.reduce((sum, hint) => sum + page.rows(hint, room, HINT) * HINT_MM + 0.8, 0);
  const highMm = (isBeside ? 0 : 3 + lines * TEXT_MM) + rows.length * LINE_MM + 1.2 + hintMm + 1;
  return { x, room, from: isBeside ? x + beside : x, isBeside, lines, rows, hints: all, highMm };
}

function drawText(flow: Flow, read: ReadText, label: string): void {
  const { page, left, width } = flow;
  const { x, room, from, isBeside, lines, rows, hints, highMm } = shapeOf(flow, read);
  // A long text may be parted between its rows of signs, a short one stays whole.
  flow.need(Math.min(60, highMm));
  page.rule(left, flow.y, left + width, flow.y);
  page.line(label, left, flow.y + 5.6, INDENT_MM - 2, TYPE.label);
  page.block(read.text, x, flow.y + 5.8, room, lines, TEXT_MM, TEXT);
  if (!isBeside) flow.y += 3 + lines * TEXT_MM;
  for (const row of rows) {
    flow.need(LINE_MM);
    const spelled = row.map((sign) => nameOf(flow, sign)).join(', ');
    page.tags.picture(spelled, () => row.forEach((sign, i) => drawSign(flow, sign, from + i * CELL_MM, flow.y + 5.6)));
    flow.y += LINE_MM;
  }
  flow.y += 1.2;
  for (const hint of hints) {
    const hintRows = page.rows(hint, room, HINT);
    flow.need(hintRows * HINT_MM);
    page.block(hint, x, flow.y + 2.4, room, hintRows, HINT_MM, HINT);
    flow.y += hintRows * HINT_MM + 0.8;
  }
  flow.y += 1;
}

/** Broken after so many, and where the text has a line end. */
function rowsOf(signs: readonly string[], most: number): string[][] {
  const rows: string[][] = [[]];
  for (const sign of signs) {
    if (sign === '\n' || rows[rows.length - 1]!.length >= most) rows.push([]);
    if (sign !== '\n') rows[rows.length - 1]!.push(sign);
  }
  return rows.filter((row) => row.length > 0);
}

function drawSign({ page }: Flow, sign: string, x: number, y: number): void {
  const [from, to] = [x + 0.7, x + CELL_MM - 0.7];
  if (sign === ' ') {
    const { doc, tags } = page;
    tags.ornament(() => {
      doc
        .moveTo(from, y - 0.6)
        .lineTo(from, y + 1.3)
        .lineTo(to, y + 1.3)
        .lineTo(to, y - 0.6);
      doc.lineWidth(0.25).strokeColor(INK.quiet).stroke();
    });
    return;
  }
  page.rule(from, y + 1.3, to, y + 1.3);
  if (page.has(sign)) page.line(sign, x - 2, y, CELL_MM + 4, { size: 11, align: 'centre' });
  else page.line(codeOf(sign), x, y - 0.4, CELL_MM, { size: 5, align: 'centre', colour: INK.copper });
}

/** Signs that the paper's own face cannot draw, by their numbers. */
function codesOf({ page, words }: Flow, signs: readonly string[]): string[] {
  const strange = new Set(signs.filter((sign) => sign !== '\n' && sign !== ' ' && !page.has(sign)));
  return [...strange].map((sign) => words.say('paperProof.codePoint', { letter: sign, code: `U+${codeOf(sign)}` }));
}

function codeOf(sign: string): string {
  return (sign.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0');
}

function nameOf({ words }: Flow, sign: string): string {
  return sign === ' ' ? words.say('paperProof.blank') : sign;
}
