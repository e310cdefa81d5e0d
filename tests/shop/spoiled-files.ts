import { readFileSync } from 'node:fs';

export const SHIPPED_SHOP = readFileSync('geometry/shop/starting-shop.json', 'utf8');

/** A shop file with one fault put in by hand, and the line in which a person would look for it. */
export interface SpoiledFile {
  readonly what: string;
  readonly text: string;
  readonly line: number;
  /** Named in the sentence. */
  readonly says: RegExp;
}

/** The shipped file with the line that holds a sign changed; the fault is told in that line, or some lines off. */
function spoiled(what: string, sign: string, change: (line: string) => string, says: RegExp, off = 0): SpoiledFile {
  const lines = SHIPPED_SHOP.split('\n');
  const at = lines.findIndex((line) => line.includes(sign));
  if (at < 0) throw new Error(`no line with ${sign}`);
  const text = lines.map((line, i) => (i === at ? change(line) : line)).join('\n');
  if (text === SHIPPED_SHOP) throw new Error(`nothing changed: ${what}`);
  return { what, text, line: at + 1 + off, says };
}

const swap = (from: string, to: string) => (line: string) => line.replace(from, to);
/** A picture of so many dots and of a colour type and interlace method (PNG, 11.2.1), as far as its header says. */
export const png = (width: number, height: number, colours = 2, interlaced = 0): string => {
  const bytes = Buffer.alloc(33);
  bytes.set([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13, 0x49, 0x48, 0x44, 0x52]);
  bytes.writeUInt32BE(width, 16);
  bytes.writeUInt32BE(height, 20);
  bytes.set([8, colours, 0, 0, interlaced], 24);
  return `data:image/png;base64,${bytes.toString('base64')}`;
};
/** One with a palette and a chunk that says which of its colours are see-through (11.3.1.1). */
function seeThroughPalette(): string {
  const head = Buffer.from(png(40, 40, 3).split(',')[1]!, 'base64');
  const chunk = Buffer.concat([Buffer.from([0, 0, 0, 1]), Buffer.from('tRNS'), Buffer.alloc(5)]);
  return `data:image/png;base64,${Buffer.concat([head, chunk]).toString('base64')}`;
}
const logo = (data: string) => (line: string) => `${line}"logo": { "kind": "picture", "data": "${data}" },`;
const noLogo = (file: SpoiledFile): SpoiledFile => ({
  ...file,
  text: file.text.replace(/"logo": \{\s*"kind": "drawing",[^]*?\]\s*\},\n/, '\n'),
});

export const SPOILED_FILES: readonly SpoiledFile[] = [
  // the text itself
  spoiled('a comma too many', '"offer"', swap('},', '},,'), /sound JSON/),
  spoiled('a quote too few', '"tax"', swap('"VAT"', '"VAT'), /sound JSON/),
  spoiled(
    'a part that stands twice',
    '"pageSize"',
    (line) => `${line}\n  "name": "Another",`,
    /"name" .* second time/,
    1,
  ),
  spoiled('a part for tampering', '"pageSize"', (line) => `${line}\n  "__proto__": { "pages": [] },`, /"__proto__"/, 1),
  spoiled('groups in groups', '"offer"', swap('30', `${'['.repeat(200)}30${']'.repeat(200)}`), /deeper/),
  // one part
  spoiled('a part nobody knows', '"pageSize"', (line) => `${line}\n  "slogan": "we cut",`, /"slogan"/, 1),
  spoiled('a part of nobody in a price', '"rolling"', swap('"perPlate"', '"perHead"'), /prices rolling/),
  spoiled('no name', '"name": "Example', () => '', /name is missing/, -3),
  spoiled('an empty name', '"name": "Example', swap('Example Plate Works', ''), /name is empty/),
  spoiled('a price as text', '"leastOrder"', swap('40', '"40"'), /leastOrder amount should be a number/),
  spoiled('a price below nothing', '"rolling"', swap('18', '-18'), /rolling perPlate is -18/),
  spoiled('days in halves', '"leadTime"', swap('3', '3.5'), /leadTime least/),
  spoiled('a currency in words', '"currency"', swap('EUR', 'euro'), /currency .*three capital letters/),
  spoiled('a page that is none', '"pages"', swap('"proof"', '"secret"'), /pages\[2\] is "secret"/),
  spoiled('no page at all', '"pages"', () => '  "pages": [],', /pages needs at least 1/),
  spoiled('paper of another size', '"pageSize"', swap('a4', 'a0'), /pageSize is "a0"/),
  spoiled('a tax of more than all', '"tax"', swap('20', '120'), /tax percent is 120/),
  spoiled(
    'an address that runs code',
    '"web"',
    swap('https://plate-works.example', 'javascript:alert(1)'),
    /web .*https/,
  ),
  spoiled('an e-mail without a place', '"email"', swap('ask@plate-works.example', 'ask'), /email .*e-mail/),
  // the logo
  noLogo(
    spoiled(
      'a logo from elsewhere',
      '"name": "Example',
      logo('https://plate-works.example/logo.png'),
      /logo data .*never an address/,
    ),
  ),
  noLogo(
    spoiled(
      'a logo that is a program',
      '"name": "Example',
      logo('data:image/svg+xml;base64,PHN2Zy8+'),
      /logo data .*PNG or JPEG/,
    ),
  ),
  noLogo(spoiled('a logo that is none', '"name": "Example', logo('data:image/png;base64,AAAA'), /no sound PNG/)),
  noLogo(spoiled('a logo like a wall', '"name": "Example', logo(png(60_000, 60_000)), /60000 by 60000 dots/)),
  noLogo(spoiled('a logo with alpha', '"name": "Example', logo(png(40, 40, 6)), /see-through/)),
  noLogo(spoiled('a logo of two passes', '"name": "Example', logo(png(40, 40, 2, 1)), /interlaced/)),
  noLogo(spoiled('a logo with a see-through colour', '"name": "Example', logo(seeThroughPalette()), /see-through/)),
  noLogo(
    spoiled(
      'a logo too heavy',
      '"name": "Example',
      logo(`data:image/png;base64,${'A'.repeat(400_000)}`),
      /logo data is too long/,
    ),
  ),
  spoiled('a logo of relative lines', '"d": "M 10', swap('L 38', 'l 28'), /logo paths\[2\] d .*M, L, Q, C and Z/),
  spoiled('a logo that lacks a number', '"d": "M 10', swap('38 26.5', '38'), /logo paths\[2\].*not sound/),
  spoiled('a logo in no colour', '"colour": "#9A4F1E"', swap('#9A4F1E', 'url(x)'), /colour .*#1A2B3C/),
  // parts against each other
  spoiled('a lead time turned about', '"leadTime"', swap('6', '2'), /leadTime goes from 3 to 2/),
  spoiled('quantity steps that fall', '"from": 12', swap('12', '4'), /quantity steps must grow/),
  spoiled('quantity steps that give less', '"from": 12', swap('10', '3'), /quantity steps must grow/),
  spoiled('diameters that do not grow', '"diameterMm": 400, "each": 38', swap('400', '250'), /diameters do not grow/),
  spoiled(
    'a table that goes down',
    '"diameterMm": 550, "each": 58',
    swap('58', '5.8'),
    /larger plate costs less.*5.8 after 38/,
  ),
  spoiled('thicknesses turned about', '"most": 1.6', swap('1.6', '0.4'), /thicknessMm goes from 0.5 to 0.4/),
  spoiled(
    'a row that never counts',
    '"least": 1.6',
    swap('1.6, "most": 3.1', '0.5, "most": 1.6'),
    /plates\[2\] never/,
    -2,
  ),
];
