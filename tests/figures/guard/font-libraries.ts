import { readFileSync } from 'node:fs';
import * as hb from 'harfbuzzjs';
import opentype from 'opentype.js';
import newest from 'opentype-newest';
import { packageFile } from '../../../fonts/node-faces.ts';
import { unpackWoff } from '../../../geometry/adapters/unpack-woff.ts';
import { seeded } from '../../judge/seeded.ts';
import { timeInTurns } from '../../bench/timing.ts';
import { type Claim, rounded } from '../claim.ts';
import { bundledKB } from './bundled-size.ts';
import { corpusFaces, LETTERS } from './glyph-corpus.ts';

const PAIRS = 100;
const SEED = 20_261_202;
const ROUNDS = 2;
/** Thousandths of the em: our kerning tables are in whole ones. */
const SAME = 1;

/** One reader of a font file, in thousandths of the em. */
interface Reader {
  advance(char: string): number;
  /** Of the outline's corners: least x, least y, greatest x, greatest y. */
  box(char: string): readonly number[];
  kern(left: string, right: string): number;
}

/**
 * opentype.js 1.3.4 stays, for outlines alone: all three draw the same glyphs (measured on 2026-12-01: 2,331, none of
 * another shape). Of 443 kerned pairs it loses 96, as does 2.0.0; HarfBuzz loses 43; our tables (fonts/kerning) lose 4.
 * HarfBuzz reads a face with 0.2 to 0.4 of the work, but that is done once a face, and it brings 194 kB where 54 kB do.
 * 2.0.0 brings 20 kB more and draws nothing better.
 */
export const FONT_CLAIMS: readonly Claim[] = [
  {
    name: 'font-libraries',
    wanted: 'opentype.js 1.3.4 against 2.0.0 and HarfBuzz: 0 glyphs of another shape',
    timed: true,
    async measure() {
      const faces = await corpusFaces();
      const fonts = faces.map(({ entry, face }) => ({
        face,
        bytes: plain(packageFile(entry.packageName, entry.file)),
      }));
      const readers = { 'opentype.js 1.3.4': byOpentype(opentype), '2.0.0': byOpentype(newest), HarfBuzz: byHarfBuzz };
      const names = Object.keys(readers);
      let [other, pairs, glyphs, shift] = [0, 0, 0, 0];
      const lost = { ours: 0, ...Object.fromEntries(names.map((name) => [name, 0])) } as Record<string, number>;
      const chance = seeded(SEED);
      for (const { face, bytes } of fonts) {
        const [first, second, third] = Object.values(readers).map((read) => read(bytes));
        for (const char of LETTERS) {
          if (!face.glyph(char)) continue;
          glyphs++;
          const boxes = [first!, second!, third!].map((r) => r.box(char) as [number, number, number, number]);
          shift = Math.max(shift, ...boxes.map(([left]) => Math.abs(left - boxes[0]![0])));
          const all = [first!, second!, third!].map((r, k) => {
            const [left, low, right, high] = boxes[k]!;
            return [r.advance(char), low, right - left, high];
          });
          if (all.some((n) => n.some((value, i) => Math.abs(value - all[0]![i]!) > SAME))) other++;
        }
        for (let i = 0; i < PAIRS; i++) {
          const [left, right] = [chance.pick(LETTERS), chance.pick(LETTERS)];
          const values = { ours: face.kern(left, right) * 1000 } as Record<string, number>;
          for (const [k, r] of [first!, second!, third!].entries()) values[names[k]!] = r.kern(left, right);
          // What any of them knows: a pair that one kerns and another does not is lost by the other.
          if (Object.values(values).every((v) => Math.abs(v) <= SAME)) continue;
          pairs++;
          for (const [name, v] of Object.entries(values)) if (Math.abs(v) <= SAME) lost[name] = (lost[name] ?? 0) + 1;
        }
      }
      const times = await timeInTurns(
        ROUNDS,
        Object.values(readers).map((read) => () => {
          for (const { bytes } of fonts.slice(0, 12)) {
            const reader = read(bytes);
            for (const char of LETTERS) reader.box(char);
          }
        }),
      );
      const kB = await Promise.all([
        bundledKB("export { parse } from 'opentype.js';"),
        bundledKB("export { parse } from 'opentype-newest';"),
        bundledKB("export * from 'harfbuzzjs';", 'harfbuzzjs/dist/harfbuzz.wasm'),
      ]);
      const told = names.map((name, i) => `${name} ${rounded(times[i]! / times[0]!, 2)} times the work, ${kB[i]} kB`);
      const losses = Object.entries(lost).map(([name, n]) => `${name} ${n}`);
      return {
        value: other,
        unit: `of ${glyphs} glyphs (moved sideways by ${rounded(shift, 2)} thousandths of the em at most); ${told.join('; ')} gzip; of ${pairs} kerned pairs lost: ${losses.join(', ')}`,
        ok: other === 0,
      };
    },
  },
];

function plain(path: string): Uint8Array {
  const bytes = unpackWoff(readFileSync(path));
  if (!bytes) throw new Error(`${path} is no WOFF file`);
  return bytes;
}

function byOpentype(library: Pick<typeof opentype, 'parse'>) {
  return (bytes: Uint8Array): Reader => {
    const font = library.parse(bytes.slice().buffer);
    const to = 1000 / font.unitsPerEm;
    return {
      advance: (char) => (font.charToGlyph(char).advanceWidth ?? 0) * to,
      box: (char) =>
        boxOf(
          font
            .charToGlyph(char)
            .path.commands.flatMap((c) =>
              'x' in c ? [...('x1' in c ? [c.x1, c.y1] : []), ...('x2' in c ? [c.x2, c.y2] : []), c.x, c.y] : [],
            ),
        ).map((v) => v * to),
      kern: (left, right) => font.getKerningValue(font.charToGlyph(left), font.charToGlyph(right)) * to,
    };
  };
}

function byHarfBuzz(bytes: Uint8Array): Reader {
  const face = new hb.Face(new hb.Blob(bytes));
  const font = new hb.Font(face);
  const to = 1000 / face.upem;
  const glyphOf = (char: string): number => font.nominalGlyph(char.codePointAt(0)!) ?? 0;
  const shaped = (text: string, kern: 0 | 1): number => {
    const buffer = new hb.Buffer();
    buffer.addText(text);
    buffer.guessSegmentProperties();
    const off = ['liga', 'clig', 'calt', 'rlig', 'ccmp'].map((tag) => new hb.Feature(tag, 0));
    hb.shape(font, buffer, [new hb.Feature('kern', kern), ...off]);
    return buffer.getGlyphPositions().reduce((sum, p) => sum + p.xAdvance, 0);
  };
  return {
    advance: (char) => font.glyphHAdvance(glyphOf(char)) * to,
    box: (char) => boxOf((font.glyphToPath(glyphOf(char)).match(/-?[\d.]+/g) ?? []).map(Number)).map((v) => v * to),
    kern: (left, right) => (shaped(left + right, 1) - shaped(left + right, 0)) * to,
  };
}

function boxOf(xy: readonly number[]): number[] {
  const [xs, ys] = [0, 1].map((k) => xy.filter((_, i) => i % 2 === k)) as [number[], number[]];
  return xy.length === 0 ? [0, 0, 0, 0] : [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}
