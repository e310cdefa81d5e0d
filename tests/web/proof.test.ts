import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { FACES } from '../../fonts/catalogue.ts';
import { loadFaces } from '../../fonts/node-faces.ts';
import { approve } from '../../geometry/approval/approve.ts';
import { addOption, optionDesigns } from '../../geometry/approval/options.ts';
import { keepRevision } from '../../geometry/approval/revisions.ts';
import { standingOf } from '../../geometry/approval/standing.ts';
import type { Finding } from '../../geometry/findings.ts';
import { emptyDesign } from '../../geometry/design/defaults.ts';
import { fingerprintOf } from '../../geometry/design/fingerprint.ts';
import { readDesign } from '../../geometry/design/read-design.ts';
import type { Design } from '../../geometry/design/schema.ts';
import { makePlate } from '../../geometry/pipeline/make-plate.ts';
import { createStore } from '../../geometry/pipeline/solve-store.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { stockRules } from '../../geometry/stock/stock-rules.ts';
import { setQuantity } from '../../web/state/actions/plates/set-quantity.ts';
import { takeApproval, wasApprovedAs } from '../../web/state/actions/agreed/take-approval.ts';
import { STARTING_SHOP } from '../../geometry/shop/built-in-shop.ts';
import { facesThatSuit } from '../../web/page/faces-that-suit.ts';
import { gatherFindings, countFindings } from '../../web/proof/state/gather-findings.ts';
import { LONGEST_MAILTO, mailTo } from '../../web/handover/link/mail-to.ts';
import { inMaterial } from '../../web/proof/options/other-stock.ts';
import { factsThatDiffer } from '../../web/proof/options/option-facts.ts';
import { plateKey } from '../../web/handover/price/plate-key.ts';
import { quoteFor } from '../../web/handover/price/quote-for.ts';
import type { PlannedPlate } from '../../web/worker/plate-api.ts';
import { spellTexts } from '../../web/proof/approve/spell-texts.ts';
import { differ } from '../../web/worker/differ.ts';
import { planMade } from '../../web/worker/plan-made.ts';

const wedding = read('golden-wedding');

function read(name: string): Design {
  const found = readDesign(readFileSync(`web/demo/${name}.json`, 'utf8'));
  if ('problem' in found) throw new Error(found.problem);
  return found.design;
}

function saying(...texts: string[]): Design {
  const [first] = wedding.elements.filter((e) => e.kind === 'lineText');
  return {
    ...wedding,
    elements: texts.map((text, i) => ({ ...first!, id: `text-${i}`, text, y: 0.3 - 0.6 * i, capHeight: 0.2 })),
  };
}

async function made(design: Design, plateId = 'large') {
  const { faces } = await loadFaces(design);
  return makePlate(design, plateId, faces, createStore(), BUILT_IN);
}

describe('texts to read', () => {
  it('are all there, blank ones apart, just as they were typed', () => {
    expect(spellTexts(saying('O’BRIEN  & SON', '   ', 'b'), 'en').map(({ text }) => text)).toEqual([
      'O’BRIEN  & SON',
      'b',
    ]);
  });
  // weekdays: 12 June 2027 is a Saturday by any perpetual calendar; words of the languages: Unicode CLDR, from memory
  it.each([
    ['en', 'Saturday, 12 June 2027'],
    ['de', 'Samstag, 12. Juni 2027'],
    ['fr', 'samedi 12 juin 2027'],
    ['es', 'sábado, 12 de junio de 2027'],
  ] as const)('write dates out in %s', (language, day) => {
    const [text] = spellTexts(saying('WED 12 JUNE 2027'), language);
    expect(text?.dates.map(({ days }) => days.map((d) => d.replace(/^(\w+) 12/, '$1 12')))).toEqual([[day]]);
  });
  it('name every day that figures can mean, none where there is no such day, and nothing without a year', () => {
    const [both, none, yearless] = spellTexts(saying('06/12/2027', '31 JUNE 2027', '12 JUNE'), 'en');
    expect(both?.dates[0]?.days).toEqual(['Monday, 6 December 2027', 'Saturday, 12 June 2027'].map(english));
    expect(none?.dates).toEqual([{ text: '31 JUNE 2027', days: [] }]);
    expect(yearless?.dates).toEqual([]);
  });
});

/** Whether a comma stands after the weekday is up to the version of CLDR. */
function english(day: string): unknown {
  return expect.stringMatching(new RegExp(`^${day.replace(',', ',?')}$`));
}

describe('an option', () => {
  const [base] = optionDesigns(wedding);
  const with3 = addOption(
    addOption(addOption(wedding, { name: 'face', faces: { golden: 'alfa-slab-one-400' } }), {
      name: 'size',
      plates: wedding.plates.map((p) => ({ ...p, diameter: { mm: 400 } })),
    }),
    { name: 'material', stock: { ...wedding.stock, material: 'mild-steel' } },
  );
  it('is told from the design by face, size or material', () => {
    const differs = optionDesigns(with3).map((o) => [...factsThatDiffer(o.design, base!.design)]);
    expect(differs).toEqual([[], ['face'], ['size'], ['material']]);
  });
  it('has as many plates as the design, when one says how many', () => {
    const { design } = setQuantity(with3, 'large', 12);
    for (const option of optionDesigns(design)) {
      expect(option.design.plates.map(({ id, quantity }) => [id, quantity])).toEqual([
        ['large', 12],
        ['half', 1],
      ]);
    }
    expect(setQuantity(wedding, 'large', 12).design).not.toHaveProperty('options');
  });
  it('is not planned anew for another number or name, and is for all that is cut otherwise', () => {
    const key = plateKey(wedding, 'large');
    expect(plateKey(setQuantity(wedding, 'large', 12).design, 'large')).toBe(key);
    const named = { ...wedding, title: 'x', plates: wedding.plates.map((p) => ({ ...p, name: 'x' })) };
    expect(plateKey(named, 'large')).toBe(key);
    for (const { design } of optionDesigns(with3).slice(1)) expect(plateKey(design, 'large')).not.toBe(key);
    expect(plateKey(wedding, 'half')).not.toBe(key);
  });
});

describe('faces that suit', () => {
  const of = (text: string, ...used: string[]) =>
    facesThatSuit(FACES, text, new Set(used)).map(({ id, kind }) => ({ id, kind }));
  it('leave out the one in use, and for capitals the faces whose capitals do not stand together', () => {
    expect(of('GOLDEN WEDDING', 'bree-serif-400').some(({ id }) => id === 'bree-serif-400')).toBe(false);
    expect(of('GOLDEN WEDDING').some(({ kind }) => kind === 'script' || kind === 'blackletter')).toBe(false);
    expect(of('Golden Wedding').some(({ kind }) => kind === 'script')).toBe(true);
    expect(of('O').some(({ kind }) => kind === 'script')).toBe(true);
    expect(of('A', 'bree-serif-400', 'oswald-700').some(({ id }) => id === 'oswald-700')).toBe(true);
  });
});

describe('another material', () => {
  it('comes in a thickness it is sold in, by a process that cuts it, and suits the use', () => {
    let offered = 0;
    for (const use of ['paint', 'torch'] as const) {
      const stock = { ...wedding.stock, use };
      for (const material of BUILT_IN.materials) {
        const other = inMaterial(BUILT_IN, stock, material);
        if (!other) continue;
        offered++;
        expect(stockRules(other, 'auto', BUILT_IN).findings).toEqual([]);
        expect(other.use).toBe(use);
        expect(material.thicknesses.some(({ mm }) => Math.abs(mm - other.thicknessMm) < 0.01)).toBe(true);
      }
    }
    expect(offered).toBeGreaterThan(8);
  });
  it('is not offered for the torch where it would burn', () => {
    const torch = { ...wedding.stock, use: 'torch' as const };
    const ply = BUILT_IN.materials.filter(({ family }) => family !== 'metal');
    expect(ply.length).toBeGreaterThan(0);
    for (const material of ply) expect(inMaterial(BUILT_IN, torch, material)).toBeUndefined();
  });
});

describe('findings of several plates', () => {
  const finding = (code: string, severity: Finding['severity'], sentence = code): Finding => ({
    code,
    severity,
    place: { kind: 'plate' },
    elementIds: [],
    sentence,
  });
  const plate = (plateId: string, ...findings: Finding[]) => ({ plateId, name: plateId, findings });
  it('are said once where they are the same', () => {
    const all = [
      plate('a', finding('measure', 'look'), finding('near', 'look', 'near by 2 mm')),
      plate('b', finding('measure', 'look'), finding('near', 'look', 'near by 1 mm')),
    ];
    expect(gatherFindings(all).map(({ finding: f, on }) => [f.sentence, on.map((p) => p.plateId).join()])).toEqual([
      ['measure', 'a,b'],
      ['near by 2 mm', 'a'],
      ['near by 1 mm', 'b'],
    ]);
    expect(countFindings(all)).toEqual({ verdict: 'look', stops: 0, looks: 3 });
  });
  it('stop all when one is stopped', () => {
    expect(countFindings([plate('a'), plate('b', finding('bad', 'stop'))]).verdict).toBe('stop');
    expect(countFindings([plate('a', finding('fyi', 'note'))])).toEqual({ verdict: 'ready', stops: 0, looks: 0 });
  });
});

describe('a mail', () => {
  // RFC 6068: section 5 (line breaks as %0D%0A), section 2 (what is not unreserved is encoded)
  it('is an address by RFC 6068', () => {
    const href = mailTo({ address: 'a+b@shop.example', subject: 'Approved: O & B?', body: 'one\ntwo #1' });
    expect(href).toBe('mailto:a%2Bb@shop.example?subject=Approved%3A%20O%20%26%20B%3F&body=one%0D%0Atwo%20%231');
    const url = new URL(href!);
    expect([url.searchParams.get('subject'), url.searchParams.get('body')]).toEqual([
      'Approved: O & B?',
      'one\r\ntwo #1',
    ]);
  });
  it('is none where it would be cut off', () => {
    expect(mailTo({ subject: '', body: 'x'.repeat(LONGEST_MAILTO) })).toBeUndefined();
  });
});

describe('a plate that is planned for its price', () => {
  it('has the length and the openings of its cut plan, and its pictures', async () => {
    const plate = await made(wedding);
    const planned = planMade(wedding, plate);
    expect(planned.openings).toBe(plate.measures.openings);
    // a rim alone is this long; every opening adds to it
    expect(planned.cuttingMm).toBeGreaterThan(Math.PI * plate.diameterMm);
    const subpaths = planned.barrel.paths.map(({ d }) => d.match(/M/g)?.length ?? 0);
    expect(Math.max(...subpaths)).toBeGreaterThanOrEqual(planned.openings);
    expect(planned.barrel.reachMm).toBeGreaterThan(plate.diameterMm / 2);
  });
  it('has only its rim where nothing is cut', async () => {
    const bare = { ...emptyDesign(), elements: [] };
    const planned = planMade(bare, await made(bare, bare.plates[0]!.id));
    expect(planned.openings).toBe(0);
    expect(planned.cuttingMm).toBeCloseTo(Math.PI * planned.plate.diameterMm, 6);
  });
});

describe('what is cut otherwise', () => {
  it('is nothing of a plate and itself, and only the letter of a plate with one letter changed', async () => {
    const [before, after] = [saying('MARROW'), saying('MARROW')];
    expect(differ(await made(before), await made(after))).toMatchObject({ onlyBefore: '', onlyAfter: '' });
    const one = differ(await made(saying('I', 'H')), await made(saying('I')));
    expect(one).toMatchObject({ onlyAfter: '' });
    expect('onlyBefore' in one && one.onlyBefore).toMatch(/^M/);
  });
});

describe('the price on the page', () => {
  it('is on request for an order with a ring that masks, since the list has none for it', () => {
    const [large] = wedding.plates;
    const design: Design = {
      ...wedding,
      plates: [large!, { id: 'ring', name: 'ring', quantity: 1, diameter: { mm: 700 }, masks: large!.id }],
    };
    const planned = design.plates.map(({ id, name, quantity }) => ({
      plate: { plateId: id, name, quantity, diameterMm: 500 },
      cuttingMm: 9000,
      openings: 12,
    })) as unknown as PlannedPlate[];
    const quote = quoteFor(STARTING_SHOP, BUILT_IN, design, planned);
    expect('problem' in quote && quote.problem).toMatch(/rings that mask, such as “ring”/);
    expect('lines' in quoteFor(STARTING_SHOP, BUILT_IN, wedding, planned.slice(0, 1))).toBe(true);
  });
});

describe('an approval that comes back', () => {
  const printOf = (design: Design) => fingerprintOf(design);
  const at = '2027-05-03T09:30:00.000Z';
  const approvedBy = (design: Design) =>
    approve(design, { name: 'Beata', at, how: 'link', fingerprint: printOf(design) });
  it('is put on the design it is of', () => {
    const back = approvedBy(wedding);
    expect(wasApprovedAs(wedding, printOf(wedding), back.approval!.fingerprint)).toBe('now');
    const { design } = takeApproval(wedding, back, printOf(wedding));
    expect(standingOf(design, printOf(design))).toMatchObject({ kind: 'approved', approval: { name: 'Beata', at } });
  });
  it('is put on the revision where the design was changed since, which then stands as changed', () => {
    const back = approvedBy(wedding);
    const kept = keepRevision(wedding, { at, why: 'sent', fingerprint: printOf(wedding) });
    const changed = { ...kept, elements: kept.elements.slice(1) };
    expect(wasApprovedAs(changed, printOf(changed), back.approval!.fingerprint)).toBe('before');
    const { design } = takeApproval(changed, back, printOf(changed));
    expect(standingOf(design, printOf(design))).toMatchObject({ kind: 'changed', letter: 'A' });
    expect(design.revisions?.[0]?.approval?.name).toBe('Beata');
    expect(design.elements).toEqual(changed.elements);
  });
  it('leaves what somebody else approved theirs', () => {
    const kept = approve(wedding, { name: 'Otto', at, how: 'paper', fingerprint: printOf(wedding) });
    const changed = { ...kept, elements: kept.elements.slice(1) };
    const { design } = takeApproval(changed, approvedBy(wedding), printOf(changed));
    expect(design.revisions?.[0]?.approval?.name).toBe('Otto');
    expect(standingOf(design, printOf(design))).toMatchObject({ kind: 'changed', approval: { name: 'Beata' } });
  });
  it('is none of another design', () => {
    const other = { ...wedding, elements: wedding.elements.slice(1) };
    expect(wasApprovedAs(other, printOf(other), approvedBy(wedding).approval!.fingerprint)).toBeUndefined();
  });
  it('brings along what was let be, once', () => {
    const accepted = [{ code: 'measure', plate: 'large', who: 'Otto', at, fingerprint: printOf(wedding) }];
    const back = { ...approvedBy(wedding), accepted };
    const once = takeApproval(wedding, back, printOf(wedding)).design;
    expect(once.accepted).toEqual(accepted);
    expect(takeApproval(once, back, printOf(wedding)).design.accepted).toEqual(accepted);
  });
});
