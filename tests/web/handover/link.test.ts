import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canonicalJson } from '../../../geometry/design/canonical-json.ts';
import { emptyDesign } from '../../../geometry/design/defaults.ts';
import { readDesign } from '../../../geometry/design/read-design.ts';
import type { Design } from '../../../geometry/design/schema.ts';
import { crc32 } from '../../../geometry/adapters/crc32.ts';
import { fromBase64Url, toBase64Url } from '../../../web/handover/link/base64url.ts';
import { packDesign } from '../../../web/handover/link/pack-design.ts';
import { ANY_LINK } from '../../../web/handover/link/limits.ts';
import { readLink } from '../../../web/handover/link/read-link.ts';

const DEMOS = new URL('../../../web/demo/', import.meta.url);
const demos = readdirSync(DEMOS).map((name) => ({ name, text: readFileSync(new URL(name, DEMOS), 'utf8') }));

describe('a link', () => {
  for (const { name, text } of demos) {
    it(`carries ${name} whole`, () => {
      const read = readDesign(text);
      if (!('design' in read)) throw new Error(read.problem);
      const packed = packDesign(read.design);
      if (read.design.elements.some((e) => e.kind === 'artwork') && 'problem' in packed) return;
      if (!('fragment' in packed)) throw new Error('too large');
      const back = readLink(packed.fragment);
      expect('design' in back && canonicalJson(back.design)).toBe(canonicalJson(read.design));
    });
  }

  it('carries whatever can be typed, unpaired surrogates included', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 120 }), (title) => {
        const design: Design = { ...emptyDesign(), title, order: { ...emptyDesign().order, notes: `${title}\ud800` } };
        const packed = packDesign(design);
        const back = 'fragment' in packed ? readLink(packed.fragment) : packed;
        expect('design' in back && canonicalJson(back.design)).toBe(canonicalJson(design));
      }),
      { seed: 7, numRuns: 60 },
    );
  });

  it('is refused when a single letter of it is another', () => {
    const packed = packDesign(emptyDesign());
    const fragment = 'fragment' in packed ? packed.fragment : '';
    for (let at = 4; at < fragment.length; at++) {
      const other = fragment[at] === 'A' ? 'B' : 'A';
      const read = readLink(`${fragment.slice(0, at)}${other}${fragment.slice(at + 1)}`);
      expect('problem' in read, `letter ${at}`).toBe(true);
    }
  });

  const packedEmpty = packDesign(emptyDesign());
  const sent = 'fragment' in packedEmpty ? packedEmpty.fragment : '';
  for (const stray of [
    '.',
    ',',
    ').',
    '>',
    '%3E',
    '"',
    '%22',
    ' ',
    '%20',
    '…',
    '%E2%80%A6',
    '»',
    '*',
    '_',
    '-',
    '?x=1',
  ]) {
    it(`is read with ${JSON.stringify(stray)} behind it`, () => {
      const back = readLink(sent + stray);
      expect('design' in back && canonicalJson(back.design)).toBe(canonicalJson(emptyDesign()));
    });
  }

  it('says that it is not whole, wherever it was cut short', () => {
    for (let length = 3; length < sent.length; length++) {
      const part = sent.slice(0, length);
      expect(ANY_LINK.test(part), part).toBe(true);
      expect(readLink(part), part).toMatchObject({ problem: expect.stringMatching(/not complete/) as unknown });
    }
  });

  it('is not made of a design too large for an address', () => {
    // numbers of a linear congruential generator stand for a font, which cannot be packed much further
    let seed = 7;
    const letter = () =>
      String.fromCharCode(65 + (((seed = (seed * 1_103_515_245 + 12_345) % 2_147_483_648) >> 20) % 26));
    const data = Array.from({ length: 30_000 }, letter).join('');
    const design = { ...emptyDesign(), ownFaces: [{ id: 'own:00000000', name: 'Mine', data }] };
    expect(packDesign(design)).toEqual({ problem: 'too-large' });
  });
});

describe('its parts', () => {
  it('computes CRC-32 as published', () => {
    // check value of CRC-32/ISO-HDLC in the Catalogue of parametrised CRC algorithms (reveng): CBF43926
    expect(crc32(new TextEncoder().encode('123456789'))).toBe(0xcbf43926);
  });

  it('writes base64url as published', () => {
    // RFC 4648 section 10, without padding
    for (const [plain, coded] of [
      ['', ''],
      ['f', 'Zg'],
      ['fo', 'Zm8'],
      ['foo', 'Zm9v'],
      ['foobar', 'Zm9vYmFy'],
    ] as const) {
      expect(toBase64Url(new TextEncoder().encode(plain))).toBe(coded);
      expect(new TextDecoder().decode(fromBase64Url(coded))).toBe(plain);
    }
    // RFC 4648 section 3.5: bits that carry nothing must be zero
    expect(fromBase64Url('Zh')).toBeUndefined();
  });
});
