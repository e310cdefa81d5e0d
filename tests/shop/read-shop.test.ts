import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { checkShop } from '../../geometry/shop/check-shop.ts';
import { STARTING_SHOP, STARTING_SHOP_FILE } from '../../geometry/shop/built-in-shop.ts';
import { readLogoPath, readLogoPicture } from '../../geometry/shop/logo.ts';
import { readShop } from '../../geometry/shop/read-shop.ts';
import { STARTING_FILE } from '../../geometry/stock/built-in-stock.ts';
import { refusalWords } from '../../web/words/say/finding-words.ts';
import { speak } from '../../web/words/t.ts';
import { png, SHIPPED_SHOP, SPOILED_FILES } from './spoiled-files.ts';

function problemOf(text: string): string {
  const read = readShop(text);
  return 'problem' in read ? read.problem : '';
}

/** The shipped file with parts in place of its own, or left out. */
function withParts(parts: object): string {
  return JSON.stringify({ ...(JSON.parse(SHIPPED_SHOP) as object), ...parts }, null, 2);
}

describe('the shop file that ships', () => {
  it('reads as any shop’s does, and loses nothing in reading', () => {
    const read = readShop(SHIPPED_SHOP);
    expect('problem' in read && read.problem).toBe(false);
    expect('file' in read && read.file).toEqual(JSON.parse(SHIPPED_SHOP));
    expect('shop' in read && read.shop).toEqual(STARTING_SHOP);
  });

  it('prices what the stock that ships has, in its currency', () => {
    expect(checkShop(STARTING_SHOP_FILE, STARTING_FILE)?.refused.problem).toBeUndefined();
  });

  it('marks every price as an example', () => {
    const { plates, cutting = [], finishing, rolling, design, packing, leastOrder } = STARTING_SHOP_FILE.prices!;
    const priced = [...plates, ...cutting, finishing, rolling, design, packing, leastOrder];
    expect(priced.map((row) => row?.source)).toEqual(priced.map(() => 'example, replace with your own'));
  });

  it('takes a plain PNG as its logo, in colours, greys or a palette', () => {
    for (const colours of [2, 0, 3]) {
      expect(problemOf(withParts({ logo: { kind: 'picture', data: png(40, 20, colours) } }))).toBe('');
    }
  });

  it('needs no more than a name and a currency', () => {
    const read = readShop('{"format":"bridgehead-shop","version":1,"name":"Us","currency":"SEK"}');
    expect('shop' in read && read.shop).toEqual({
      name: 'Us',
      currency: 'SEK',
      address: [],
      contact: {},
      legal: [],
      pages: ['design', 'proof', 'cut'],
      pageSize: 'a4',
    });
  });
});

describe('a shop file that is wrong is refused with its line and what to do', () => {
  it.each([
    ['empty', ' \n ', /empty/],
    ['a stock file', readFileSync('geometry/stock/starting-stock.json', 'utf8'), /not a shop file.*"bridgehead-shop"/],
    ['a list', '[]', /not a shop file/],
    ['too new', '{"format":"bridgehead-shop","version":7}', /version 7.*version 1.*newer/],
    ['huge', ' '.repeat(6_000_000), /larger than 5 MB/],
    ['nested without end', '[{"a":'.repeat(500_000), /Line 1: .*deeper/],
    [
      'a number without end',
      `{"format":"bridgehead-shop","version":1,"name":"Us","currency":"EUR","offer":{"validDays":1e999}}`,
      /validDays/,
    ],
  ])('%s', (_, text, sentence) => {
    expect(problemOf(text)).toMatch(sentence);
  });

  it.each(SPOILED_FILES.map((file) => [file.what, file] as const))('%s', (_, { text, line, says }) => {
    const problem = problemOf(text);
    expect(problem).toMatch(new RegExp(`^Line ${line}: `));
    expect(problem).toMatch(says);
  });

  it('says the line of a fault in the stock inside, as the schema and as the contradictions have it', () => {
    const lineOf = (text: string, sign: string): number => text.split('\n').findIndex((l) => l.includes(sign)) + 1;
    const spoil = (
      change: (stock: {
        currency: string;
        processes: { kerfMm: { value: unknown } }[];
        advice: { torch: string[] };
      }) => void,
    ) => {
      const stock = structuredClone(STARTING_FILE) as unknown as Parameters<typeof change>[0];
      change(stock);
      return withParts({ stock });
    };
    const kerf = spoil((s) => (s.processes[0]!.kerfMm.value = 'seventeen'));
    expect(problemOf(kerf)).toMatch(
      new RegExp(`^Line ${lineOf(kerf, 'seventeen')}: .*stock processes\\[1\\] \\("fibre-laser"\\) kerfMm value`),
    );
    const torch = spoil((s) => (s.advice.torch = ['gold']));
    expect(problemOf(torch)).toMatch(new RegExp(`^Line ${lineOf(torch, '"advice"')}: .*"gold"`));
    const dollars = spoil((s) => (s.currency = 'USD'));
    expect(problemOf(dollars)).toMatch(/^Line \d+: .*in EUR.*counts in USD/);
  });

  it('holds prices against the stock inside it', () => {
    const prices = { plates: [{ materials: ['unobtainium'], upTo: [{ diameterMm: 500, each: 1 }] }] };
    expect(problemOf(withParts({ prices }))).toBe('');
    expect(problemOf(withParts({ prices, stock: STARTING_FILE }))).toMatch(/prices plates\[1\].*"unobtainium"/);
    const cutting = [{ processes: ['scissors'], perMetre: 1 }];
    expect(problemOf(withParts({ prices: { ...STARTING_SHOP_FILE.prices, cutting }, stock: STARTING_FILE }))).toMatch(
      /prices cutting\[1\].*process "scissors"/,
    );
  });

  it('is told in the language spoken', async () => {
    const read = readShop(withParts({ currency: 'euro' }));
    if (!('problem' in read)) throw new Error('taken');
    await speak('de');
    expect(refusalWords(read)).toMatch(/^Zeile \d+: In dieser Betriebsdatei, currency, sollte aus drei Großbuchstaben/);
    await speak('en');
  });
});

describe('a logo', () => {
  it('is a path whose commands each have all their numbers', () => {
    expect(readLogoPath('M1,2 3 4L-5-6.5e0Z')).toEqual([
      { command: 'M', numbers: [1, 2] },
      { command: 'L', numbers: [3, 4] },
      { command: 'L', numbers: [-5, -6.5] },
      { command: 'Z', numbers: [] },
    ]);
    for (const d of [
      '',
      'L 1 2',
      'M 1',
      'M 1 2 3',
      'M 1 2 Z 3',
      'M 1 2 Q 1 2 3',
      'M 1 2 l 3 4',
      'M 1e999 2',
      'M . .',
    ]) {
      expect(readLogoPath(d), d).toBeUndefined();
    }
  });

  it('is a picture whose header says its size', () => {
    // Start, a segment to pass over, and a frame of two by one dots: ITU-T T.81, annex B, by hand.
    const jpeg = [0xff, 0xd8, 0xff, 0xe0, 0, 4, 0, 0, 0xff, 0xc0, 0, 11, 8, 0, 1, 0, 2, 1, 1, 0x11, 0];
    const data = `data:image/jpeg;base64,${Buffer.from(jpeg).toString('base64')}`;
    expect(readLogoPicture(data)).toMatchObject({ type: 'jpeg', width: 2, height: 1 });
    expect(readLogoPicture(data.replace('jpeg', 'png'))).toBeUndefined();
    expect(readLogoPicture(data.slice(0, 23 + 8))).toBeUndefined();
  });
});
