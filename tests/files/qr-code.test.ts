import jsQR from 'jsqr';
import { describe, expect, it } from 'vitest';
import { fingerprintOf } from '../../geometry/design/fingerprint.ts';
import { codeText } from '../../geometry/files/paper/qr-code.ts';
import { writeSpecSheet } from '../../geometry/files/paper/spec-sheet.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { fonts, plannedPlate } from '../proof/set-up.ts';
import { hasTool, pageImage } from '../readers/poppler.ts';
import { HAND_PRINT, handDesign } from './hand-plate.ts';

describe('the code on the spec sheet', () => {
  it('says the whole fingerprint and the title, on one line', () => {
    const design = handDesign({ title: `Ten\npears ${'x'.repeat(90)}` });
    const whole = fingerprintOf(design);
    const text = codeText(design, whole);
    expect(text).toMatch(new RegExp(`^bridgehead:${whole};Ten pears x+…$`));
    expect([...text].length).toBeLessThanOrEqual(11 + 64 + 1 + 60);
  });

  it('never says another fingerprint than the plates carry', () => {
    expect(codeText(handDesign({ title: 'Pear' }), HAND_PRINT)).toBe(`bridgehead:${HAND_PRINT};Pear`);
  });

  // jsQR is not what made the code; 150 dots to the inch is less than an office printer has.
  it.runIf(hasTool('pdftoppm')).each(['a4', 'letter'] as const)('is read back from the page, %s', async (page) => {
    for (const title of ['Golden wedding', 'Łódź & Co., 50 años · Grüße', '']) {
      const design = handDesign({ title });
      const whole = fingerprintOf(design);
      const { plate, plan } = plannedPlate(500);
      const plates = [{ plate: { ...plate, fingerprint: whole }, plan }];
      const bytes = await writeSpecSheet(design, plates, fonts, BUILT_IN, { page, language: 'en' });
      const { rgba, width, height } = pageImage(bytes, 1, 150);
      expect(jsQR(rgba, width, height)?.data).toBe(`bridgehead:${whole};${title}`);
    }
  });
});
