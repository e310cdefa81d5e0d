/* eslint-disable @typescript-eslint/no-explicit-any, @typescript-eslint/no-unsafe-member-access, @typescript-eslint/no-unsafe-call, @typescript-eslint/no-unsafe-return -- each case spoils a file that is anything */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { readStock } from '../../geometry/stock/read-stock.ts';
import { materialIn, processFit } from '../../geometry/stock/stock-book.ts';
import { stockRules } from '../../geometry/stock/stock-rules.ts';
import { stockSources } from '../../geometry/stock/stock-sources.ts';
import { refusalWords } from '../../web/words/say/finding-words.ts';
import { speak } from '../../web/words/t.ts';

const SHIPPED = readFileSync('geometry/stock/starting-stock.json', 'utf8');

/** The shipped file after a change to what it holds. */
function changed(change: (file: any) => void): ReturnType<typeof readStock> {
  const file: unknown = JSON.parse(SHIPPED);
  change(file);
  return readStock(JSON.stringify(file));
}

function problemOf(change: (file: any) => void): string {
  const read = changed(change);
  return 'problem' in read ? read.problem : '';
}

describe('the stock file that ships', () => {
  it('reads as any shop’s file does, and gives the built-in book', () => {
    const read = readStock(SHIPPED);
    expect('problem' in read && read.problem).toBe(false);
    expect('book' in read && read.book).toEqual({ ...BUILT_IN, shipped: BUILT_IN });
  });

  it('loses nothing in reading', () => {
    const read = readStock(SHIPPED);
    expect('file' in read && read.file).toEqual(JSON.parse(SHIPPED));
  });

  it('gives every number a source', () => {
    // Every record with a value must say where it comes from; the schema asks for it, and no source is empty talk.
    const sources = [...SHIPPED.matchAll(/"source": "([^"]*)"/g)].map((m) => m[1] ?? '');
    expect(sources.length).toBeGreaterThan(200);
    expect(sources.filter((s) => s.length < 8)).toEqual([]);
  });

  it('has a speed for every sheet that it says a process cuts well', () => {
    for (const material of BUILT_IN.materials) {
      for (const process of BUILT_IN.processes) {
        if (processFit(material, process.id).grade === 'never') continue;
        const rows = process.cutting.find((c) => c.materials.includes(material.id))?.rows ?? [];
        const range = process.families[material.family]?.thicknessMm;
        for (const { mm } of material.thicknesses) {
          if (!range || mm < range.least || mm > range.most) continue;
          expect(mm, `${material.id} ${mm} by ${process.id}`).toBeLessThanOrEqual(rows.at(-1)?.thicknessMm ?? 0);
        }
      }
    }
  });
});

describe('a stock file that is wrong is refused with the place and what to do', () => {
  it.each<[string, string, RegExp]>([
    ['empty', '  ', /empty/],
    ['no JSON', '{\n  "format": "bridgehead-stock",\n  "version": 1,,\n}', /Line 3: .*JSON/],
    ['another file', '{"format":"bridgehead-design"}', /not a stock file/],
    ['a list', '[]', /not a stock file/],
    ['too new', '{"format":"bridgehead-stock","version":9}', /version 9.*version 1.*newer/],
  ])('%s', (_, text, sentence) => {
    const read = readStock(text);
    expect('problem' in read && read.problem).toMatch(sentence);
  });

  it.each<[string, (file: any) => void, RegExp]>([
    [
      'a number without a source',
      (f) => delete f.processes[0].kerfMm.source,
      /processes\[1\] \("fibre-laser"\) kerfMm source is missing/,
    ],
    [
      'a number as text',
      (f) => (f.materials[1].densityKgM3.value = '8000'),
      /materials\[2\] \("stainless-316"\) densityKgM3 value should be a number/,
    ],
    [
      'a kerf below nothing',
      (f) => (f.processes[4].kerfMm.value = -1),
      /\("plasma"\) kerfMm value is -1, below the least/,
    ],
    ['a part nobody knows', (f) => (f.rules.luck = 1), /rules holds "luck", which no such file has/],
    [
      'a gauge outside',
      (f) => (f.materials[0].thicknesses[0] = { gauge: 40 }),
      /thicknesses\[1\] gauge is 40, above the most/,
    ],
    ['a material twice', (f) => f.materials.push(f.materials[0]), /two materials carry the same id, "stainless-304"/],
    [
      'a gauge of no system',
      (f) => delete f.materials[0].gaugeSystem,
      /"stainless-304" has a gauge but no gaugeSystem/,
    ],
    ['a never without a reason', (f) => delete f.materials[0].processes.router.why, /"never" with 0 reasons/],
    [
      'an unknown process',
      (f) => (f.materials[0].processes.scissors = { grade: 'yes' }),
      /speaks of the process "scissors"/,
    ],
    [
      'a pair without a rule',
      (f) => delete f.processes[0].families.metal,
      /"fibre-laser" may cut "stainless-304".*"metal"/,
    ],
    [
      'water jet with a class for flames',
      (f) => (f.processes[2].tolerance = { standard: 'ISO 9013', class: '1', source: 'x' }),
      /thermal cutting only/,
    ],
    ['speeds out of order', (f) => f.processes[0].cutting[0].rows.reverse(), /Sort them/],
    ['advice that leads nowhere', (f) => (f.advice.torch = ['gold']), /"gold", which is not in its list/],
    ['a currency in words', (f) => (f.currency = 'euro'), /currency/],
  ])('%s', (_, change, sentence) => {
    expect(problemOf(change)).toMatch(sentence);
  });

  it('is told in the language spoken, with parts named as they stand in the file', async () => {
    await speak('de');
    const said = (change: (file: any) => void) => {
      const read = changed(change);
      return 'problem' in read ? refusalWords(read) : '';
    };
    const kerf = said((f) => delete f.processes[0].kerfMm.source);
    expect(kerf).toMatch(/Materialdatei, processes\[1\] \("fibre-laser"\) kerfMm source, fehlt/);
    expect(said((f) => (f.advice.torch = ['gold']))).toMatch(/der Rat.* das Material „gold“/);
    await speak('en');
  });
});

describe('the line of the file', () => {
  const LINES = SHIPPED.split('\n');
  const lineWith = (sign: string): number => LINES.findIndex((line) => line.includes(sign)) + 1;
  const problemIn = (text: string): string => {
    const read = readStock(text);
    return 'problem' in read ? read.problem : '';
  };

  it('stands in front of what is wrong with a part, missing ones told at the group they belong in', () => {
    const spoiled = SHIPPED.replace('"sagMm": { "value":', '"sagMm": { "valu":');
    expect(problemIn(spoiled)).toMatch(new RegExp(`^Line ${lineWith('"sagMm"')}: In this stock file, rules sagMm `));
  });

  it('stands in front of a contradiction', () => {
    const spoiled = SHIPPED.replace('"id": "stainless-430"', '"id": "stainless-304"');
    expect(problemIn(spoiled)).toMatch(
      new RegExp(`^Line ${lineWith('"id": "stainless-430"') - 1}: .*same id, "stainless-304"`),
    );
  });

  it('is told of a part that stands twice, which the engine would take in silence', () => {
    const spoiled = SHIPPED.replace('"currency": "EUR",', '"currency": "EUR",\n  "currency": "USD",');
    expect(problemIn(spoiled)).toBe(
      'Line 5: the part "currency" stands here a second time in its group. Take one of the two out.',
    );
  });
});

describe('a shop’s own file', () => {
  const read = changed((f) => {
    f.materials.push({
      id: 'vinyl-film',
      name: 'Vinyl film',
      sentence: 'Sticks to the head by itself.',
      family: 'plastic',
      holds: ['chlorine'],
      densityKgM3: { value: 1350, source: 'its maker' },
      thicknesses: [{ mm: 0.3 }],
      pricePerKg: { value: 9, source: 'its maker' },
      torch: { grade: 'yes' },
      processes: { 'co2-laser': { grade: 'yes' }, router: { grade: 'poor', reason: 'it lifts off the bed' } },
    });
    f.processes[0].families.metal.bridge.mm = 2.2;
  });
  if ('problem' in read) throw new Error(read.problem);
  const { book } = read;

  it('cannot put what holds chlorine under a laser or a torch, whatever it says', () => {
    const vinyl = materialIn(book, 'vinyl-film');
    if (!vinyl) throw new Error('lost');
    for (const id of ['fibre-laser', 'co2-laser']) {
      expect(processFit(vinyl, id)).toMatchObject({ grade: 'never', why: 'pvcLaser' });
    }
    expect(vinyl.torch).toMatchObject({ grade: 'never', why: 'pvcTorch' });
    expect(processFit(vinyl, 'router')).toEqual({ grade: 'poor', reason: 'it lifts off the bed' });
    expect(processFit(vinyl, 'plasma').grade).toBe('never');
    expect(processFit(vinyl, 'constructor').grade).toBe('never');
    const stock = { material: 'vinyl-film', process: 'co2-laser', thicknessMm: 0.3, use: 'paint' } as const;
    expect(stockRules(stock, 'auto', book).findings.map((f) => f.code)).toEqual(['material-unfit-for-process']);
    expect(stockRules(stock, 'auto', BUILT_IN).findings.map((f) => f.code)).toEqual(['unknown-material']);
    const [finding] = stockRules({ ...stock, process: 'router' }, 'auto', book).findings;
    expect(finding?.sentence).toContain('it lifts off the bed');
  });

  it('gives rules and sources of its own', () => {
    const stock = { material: 'stainless-304', process: 'fibre-laser', thicknessMm: 1.5, use: 'paint' } as const;
    expect(stockRules(stock, 'auto', book).rules.leastBridgeMm).toBe(2.2);
    expect(stockRules(stock, 'auto', BUILT_IN).rules.leastBridgeMm).toBe(1.5);
    expect(stockSources({ ...stock, material: 'vinyl-film' }, book)[0]).toMatchObject({
      value: 1350,
      source: 'its maker',
    });
  });
});
