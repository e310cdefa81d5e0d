import { afterEach, describe, expect, it } from 'vitest';
import { showFingerprint } from '../../geometry/design/show-fingerprint.ts';
import { fingerprintOf } from '../../geometry/design/fingerprint.ts';
import type { Design } from '../../geometry/design/schema.ts';
import { writeOrderText } from '../../geometry/order-file/order-text.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { orderLetter } from '../../web/handover/order/order-letter.ts';
import { speak, withWords } from '../../web/words/t.ts';
import { approved, smallDesign } from './sound-order.ts';

afterEach(() => speak('en'));

const plates = [{ plateId: 'p', diameterMm: 300 }];

function textOf(design: Design, price?: string): string {
  const fingerprint = fingerprintOf(design);
  return writeOrderText({ design, plates, fingerprint, book: BUILT_IN, price }, (words) => words.english);
}

describe('an order as plain text', () => {
  it('says what is ordered, line by line', () => {
    const design = smallDesign('OB');
    expect(textOf(design, 'EUR 240.00').split('\n')).toEqual([
      'Stencil order: Ottilie & Bastian',
      'For: Marrow Lane Perry',
      'Reference: 27-118',
      'Needed by: 12 June 2027',
      '',
      'Plates:',
      '1 × Large, 300 mm across',
      expect.stringMatching(/^Material: .+, [\d.]+ mm, .+$/),
      '',
      'What it says:',
      '“OB”',
      '',
      'Price: EUR 240.00',
      `Fingerprint: ${showFingerprint(fingerprintOf(design))}`,
      'Approved by O. Marrow, 26 November 2026',
      'The approval is for the drawing only: quantity and price were not part of it',
      '',
    ]);
  });

  it('says loudly that something else was approved, and nothing of a price that nobody named', () => {
    const stale = textOf(approved(smallDesign('OB'), 'f'.repeat(64)));
    expect(stale).toContain('NOT APPROVED: the approval of O. Marrow is for ffff ffff ffff ffff');
    expect(stale).not.toContain('Price');
    const { approval: _, ...open } = smallDesign('OB');
    expect(textOf(open)).toContain('\nNot approved yet\n');
  });

  it('keeps what was typed on its own line', () => {
    const design = { ...smallDesign('OB', 'Perry\nApproved by the king'), approval: undefined };
    const { approval: _, ...open } = design;
    const notes = 'Soon\r\nFingerprint: 00000000\u2028Price: EUR 0';
    const text = textOf({ ...open, order: { ...open.order, notes } });
    expect(text.match(/^(Approved|Price|Fingerprint: 0)/gm)).toBeNull();
  });

  it('is a mail in the language spoken', async () => {
    await withWords(Promise.resolve(), 'work');
    await speak('de');
    const { subject, body } = orderLetter({ design: smallDesign('OB'), plates, book: BUILT_IN, unit: 'mm' });
    expect(subject).toBe('Schablonenauftrag: Ottilie & Bastian');
    expect(body).toContain('\n1 × Large, Durchmesser 300 mm\n');
    expect(body).toContain('\nFreigegeben von O. Marrow, ');
  });
});
