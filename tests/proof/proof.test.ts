import { describe, expect, it } from 'vitest';
import type { Design } from '../../geometry/design/schema.ts';
import type { Finding } from '../../geometry/findings.ts';
import { PAPERS } from '../../geometry/files/paper/page-size.ts';
import { approve } from '../../geometry/approval/approve.ts';
import { offerOf } from '../../geometry/approval/offer.ts';
import { writeProof } from '../../geometry/proof/write-proof.ts';
import { said } from '../../geometry/sentences/say.ts';
import { paperSpeak } from '../../web/words/paper-speak.ts';
import { HAND_PRINT, HAND_PRINT_SHOWN, handDesign } from '../files/hand-plate.ts';
import { readAllPages } from '../readers/pdf-reader.ts';
import { askTool, fontsOf, hasTool } from '../readers/poppler.ts';
import { asked, fonts, lineText, MM, plannedPlate, QUOTE, SHOP } from './set-up.ts';

const textsOf = async (bytes: Uint8Array) => {
  const { pages } = await readAllPages(bytes);
  return pages.map((page) => page.texts.map((t) => t.text).join(' | '));
};

describe('the proof', () => {
  it.each(['a4', 'letter'] as const)('is on %s, every page, with title and language', async (page) => {
    const bytes = await writeProof(asked({ page, tiles: true, quote: QUOTE, shop: SHOP }), fonts);
    const read = await readAllPages(bytes);
    expect(read.title).toBe('Marrow Lane Perry');
    expect(read.lang).toBe('en');
    expect(read.pages.length).toBeGreaterThan(6);
    for (const { size } of read.pages) {
      expect(size[0] / MM).toBeCloseTo(PAPERS[page].widthMm, 2);
      expect(size[1] / MM).toBeCloseTo(PAPERS[page].heightMm, 2);
    }
  });

  it('says whose it is, what it is, what it costs and until when', async () => {
    const order = { who: 'Ada Pell', reference: 'Cask 27', neededBy: '2027-05-14', notes: '' };
    const all = (
      await textsOf(await writeProof(asked({ design: handDesign({ order }), quote: QUOTE, shop: SHOP }), fonts))
    ).join(' | ');
    for (const text of [
      'Marrow Lane Metalworks',
      '3 Marrow Lane',
      'Perrymead',
      'desk@marrow-lane.example',
      'Ada Pell',
    ]) {
      expect(all).toContain(text);
    }
    for (const text of [
      HAND_PRINT_SHOWN,
      '500.0 mm',
      '19.685 in',
      'Paint',
      'Cask 27',
      '14 May 2027',
      'Not yet approved',
    ]) {
      expect(all).toContain(text);
    }
    for (const text of ['Plate, Large', '12.34 m', 'VAT 20 %', '€144.02', '5 to 8 working days', '30 days']) {
      expect(all).toContain(text);
    }
    expect(all).toContain('Goods stay ours until they are paid for.');
    expect(all).toContain('I have read every letter');
  });

  it('says nothing of a price that nobody named', async () => {
    const all = (await textsOf(await writeProof(asked(), fonts))).join(' | ');
    expect(all).not.toMatch(/Total|tax|€/);
  });

  it('shows every sign of every text as it was typed, with what is found about it', async () => {
    const elements = [lineText('a', 'ANNA  & 2O27'), lineText('b', '12 JUNE 2027'), lineText('c', 'ŁÓDŹ 桶')];
    const finding: Finding = {
      code: 'blanks',
      severity: 'look',
      place: { kind: 'plate' },
      elementIds: ['a'],
      ...said('lettering.spacesDoubled', { text: 'ANNA  & 2O27' }),
    };
    const bytes = await writeProof(
      asked({ design: handDesign({ elements }), plates: [plannedPlate(500, 'Large', [finding])] }),
      fonts,
    );
    const read = await readAllPages(bytes);
    const texts = read.pages[1]!.texts;
    // Each sign stands by itself on the line of its text: two blanks leave no sign, but their room.
    const row = (label: string) => {
      const at = texts.find((t) => t.text === label)!;
      // Beside the number and the text in one piece, which are 70 mm wide.
      const signs = texts.filter((t) => Math.abs(t.y - at.y) < 2 && t.x > at.x + 70 * MM && t.text.length === 1);
      return signs.map((t) => t.text);
    };
    expect(row('Text 1')).toEqual([...'ANNA&2O27']);
    expect(row('Text 2')).toEqual([...'12JUNE2027']);
    const all = texts.map((t) => t.text).join(' | ');
    expect(all).toContain('several blanks stand together');
    // 12 June 2027 is a Saturday: Zeller's congruence, by hand.
    expect(all).toContain('12 JUNE 2027 is a Saturday: 2027-06-12');
    expect(row('Text 3')).toEqual([...'ŁÓDŹ']);
    // What the paper's face lacks is named by its number (Unicode: a pail).
    expect(all).toContain('U+6876');
  });

  it('names the documents that cautions come from, by use', async () => {
    const design = (use: 'paint' | 'torch'): Design =>
      handDesign({ stock: { material: 'stainless-304', thicknessMm: 1.5, process: 'fibre-laser', use } });
    const [paint, torch] = await Promise.all(
      (['paint', 'torch'] as const).map(async (use) =>
        (await textsOf(await writeProof(asked({ design: design(use) }), fonts))).join(' '),
      ),
    );
    for (const document of ['29 CFR 1910.252', 'NFPA 51B', 'NIOSH', '1910.1026', '1910.138', 'Local codes']) {
      expect(torch).toContain(document);
    }
    for (const document of ['29 CFR 1910.107', 'respirator', '1910.138', 'Local codes'])
      expect(paint).toContain(document);
    expect(paint).not.toContain('NFPA');
  });

  it('says by whom it was approved, and is loud where it was changed since', async () => {
    const approval = (fingerprint: string) => ({
      name: 'Ada Pell',
      at: '2027-01-04',
      how: 'link' as const,
      fingerprint,
    });
    const of = async (fingerprint: string) =>
      (await textsOf(await writeProof(asked({ design: handDesign({ approval: approval(fingerprint) }) }), fonts))).join(
        ' | ',
      );
    const same = await of(HAND_PRINT);
    expect(same).toContain('Approved by Ada Pell, 4 January 2027');
    expect(same).not.toContain('Signature');
    const other = await of('f'.repeat(64));
    expect(other.match(/Not the approved design: Ada Pell/g)).toHaveLength(2);
    expect(other).toContain('Signature');
  });

  it('carries what was offered: plates by size and number, number, day and last day, whatever the list says today', async () => {
    const base = handDesign();
    const quote = { ...QUOTE, validDays: 30 };
    const made = { fingerprint: HAND_PRINT, made: '2027-01-02', number: '2027-K7QMP-1', quote };
    const design = { ...base, offer: offerOf(base, made) };
    const dearer = { ...QUOTE, totalMinor: 99_999 };
    const says = async (of: Design) =>
      (await textsOf(await writeProof(asked({ design: of, quote: dearer }), fonts))).join(' | ');
    const open = await says(design);
    for (const text of [
      '2027-K7QMP-1',
      '2 January 2027',
      '1 February 2027',
      '€144.02',
      'with VAT 20 %',
      '€40.00 each',
    ]) {
      expect(open).toContain(text);
    }
    expect(open).not.toContain('€999.99');
    const given = { name: 'Ada Pell', at: '2027-01-04', how: 'link', fingerprint: HAND_PRINT } as const;
    const approved = approve(design, given);
    const agreed = await says(approved);
    expect(agreed).toContain('A P P R O V E D');
    expect(agreed).toContain('offer 2027-K7QMP-1, EUR 144.02');
    const notes = { ...approved, order: { ...approved.order, notes: 'Call before you send it.' } };
    expect(await says(notes)).toContain('Call before you send it.');
    const fifty = { ...approved, plates: approved.plates.map((p) => ({ ...p, quantity: 50 })) };
    const changed = await says(fifty);
    expect(changed).toContain('Order not as approved');
    expect(changed).toContain('€999.99');
    expect(changed).not.toContain('A P P R O V E D');
    expect(changed).toContain('Signature');
  });

  it('sets up to four options side by side', async () => {
    const options = ['Plain', 'Bold', 'Thick', 'Burnt', 'Fifth'].map((name, i) => ({
      name,
      design: handDesign(),
      plates: [plannedPlate(300 + i)],
      quote: QUOTE,
    }));
    const pages = await textsOf(await writeProof(asked({ options }), fonts));
    const page = pages.find((texts) => texts.includes('To choose from'))!;
    for (const text of ['Plain', 'Bold', 'Thick', 'Burnt', '303.0 mm', '€144.02']) expect(page).toContain(text);
    expect(page).not.toContain('Fifth');
  });

  it.each(['de', 'fr', 'es'] as const)('speaks %s, all of it', async (language) => {
    const elements = [lineText('a', '12 JUNE 2027')];
    const wishes = { design: handDesign({ elements }), tiles: true, quote: QUOTE, shop: SHOP };
    const [english, other] = await Promise.all([
      writeProof(asked(wishes), fonts),
      writeProof(asked({ ...wishes, language, speak: await paperSpeak(language) }), fonts),
    ]);
    const read = await readAllPages(other);
    expect(read.lang).toBe(language);
    const theirs = new Set((await readAllPages(english)).pages.flatMap((p) => p.texts.map((t) => t.text)));
    const alike = read.pages.flatMap((p) => p.texts.map((t) => t.text)).filter((text) => theirs.has(text));
    // What is the same in both is typed by someone, a name, a number, a document or a size, or one of these words.
    const own = /^(Text \d+|Total|Date|Name|Signature|Diameter|Material)$/;
    const typed = [
      ...SHOP.address,
      ...SHOP.legal,
      SHOP.name,
      SHOP.contact.email,
      '12 JUNE 2027',
      'Marrow Lane Perry',
      'Large',
    ];
    const left = alike.filter((t) => !typed.some((known) => known?.includes(t)) && !own.test(t));
    expect(left.filter((t) => /[a-z]{4}/i.test(t) && !t.includes(HAND_PRINT_SHOWN))).toEqual([]);
    expect(read.pages.flatMap((p) => p.texts.map((t) => t.text)).join(' ')).toContain('144,02');
  });

  it('keeps every text within its page, however long texts are', async () => {
    const long = 'WITH LOVE FROM ALL OF US AT THE OLD ORCHARD '.repeat(6).trim();
    const elements = Array.from({ length: 12 }, (_, i) => lineText(`t${i}`, i % 3 === 0 ? long : `LINE ${i}`));
    const design = handDesign({
      title: 'A title that goes on about pears and casks '.repeat(4).slice(0, 120),
      elements,
    });
    const plates = [560, 280, 140].map((d) => plannedPlate(d, `Plate of ${d} for the customer with a name`));
    for (const page of ['a4', 'letter'] as const) {
      const bytes = await writeProof(asked({ design, plates, page, quote: QUOTE, shop: SHOP }), fonts);
      for (const { texts, size } of (await readAllPages(bytes)).pages) {
        for (const { text, x, y, width } of texts) {
          expect(x, text).toBeGreaterThan(9 * MM);
          expect(x + width, text).toBeLessThan(size[0] - 9 * MM);
          expect(y, text).toBeGreaterThan(8 * MM);
          expect(y, text).toBeLessThan(size[1] - 8 * MM);
        }
        for (const [i, a] of texts.entries()) {
          for (const b of texts.slice(i + 1)) {
            const meet = a.x < b.x + b.width - 0.5 && b.x < a.x + a.width - 0.5 && Math.abs(a.y - b.y) < 5;
            expect(meet, `"${a.text}" lies on "${b.text}"`).toBe(false);
          }
        }
      }
    }
  });

  it('gives the same bytes twice', async () => {
    const wishes = asked({ tiles: true, quote: QUOTE, shop: SHOP });
    const [one, two] = [await writeProof(wishes, fonts), await writeProof(wishes, fonts)];
    expect(Buffer.compare(Buffer.from(one), Buffer.from(two))).toBe(0);
  });

  it.each([
    [533.4, 266.7],
    [1200, 90],
    [300, 150],
  ])('draws plates of %d and %d mm right to 0.1 mm at the scale it states', async (large, small) => {
    const plates = [plannedPlate(large, 'Large'), plannedPlate(small, 'Small')];
    const page = (await readAllPages(await writeProof(asked({ plates }), fonts))).pages[1]!;
    const scale = Number(/Scale 1:([\d.]+)/.exec(page.texts.map((t) => t.text).join(' '))![1]);
    const widths = page.boxes
      .filter((b) => Math.abs(b.maxX - b.minX - (b.maxY - b.minY)) < 1e-3)
      .map((b) => ((b.maxX - b.minX) / MM) * scale);
    for (const diameter of [large, small]) {
      expect(Math.min(...widths.map((w) => Math.abs(w - diameter)))).toBeLessThan(0.1);
    }
  });

  it.runIf(hasTool('pdffonts'))('embeds its fonts as subsets', async () => {
    const { all, loose } = fontsOf(await writeProof(asked({ tiles: true }), fonts));
    expect(all).toBe(2);
    expect(loose).toEqual([]);
  });

  it.runIf(hasTool('pdfinfo'))('is tagged: title, paragraphs, pictures with words, table', async () => {
    const bytes = await writeProof(asked({ quote: QUOTE }), fonts);
    expect(askTool('pdfinfo', ['{}'], bytes).text).toMatch(/Tagged: +yes/);
    const tree = askTool('pdfinfo', ['-struct-text', '{}'], bytes).text;
    for (const tag of ['Document', 'H1', 'H2', 'P ', 'Figure', 'Table', 'TR', 'TH', 'TD', 'LI'])
      expect(tree).toContain(tag);
    expect(tree).toContain('Marrow Lane Perry');
    expect(tree).toContain('Plate, Large');
    // What is only ornament is in no part of it.
    expect(tree).not.toContain('page 1 of');
  });

  it.runIf(hasTool('qpdf'))('passes the check of qpdf', async () => {
    const { status, text } = askTool(
      'qpdf',
      ['--check', '{}'],
      await writeProof(asked({ tiles: true, shop: SHOP }), fonts),
    );
    expect(status, text).toBe(0);
  });
});
