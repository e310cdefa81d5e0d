import { expect, it } from 'vitest';
import { loadFaces } from '../../fonts/node-faces.ts';
import { sheetFonts } from '../../geometry/command/read-files.ts';
import { markOf } from '../../geometry/order-file/marks.ts';
import { planPlates } from '../../geometry/pipeline/plan-plates.ts';
import { writeProof } from '../../geometry/proof/write-proof.ts';
import { createStore } from '../../geometry/pipeline/solve-store.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { speakFrom } from '../../geometry/sentences/speak-from.ts';
import french from '../../web/words/fr/paper/paper.json';
import { encode, smallDesign } from './sound-order.ts';

it('finds what a file says of itself where our writers put it, in any language, and never in a title', async () => {
  // A title that claims to be of another design.
  const design = smallDesign('OB', 'Fingerprint: deadbeef');
  const { faces } = await loadFaces(design);
  const plates = planPlates(design, faces, createStore(), BUILT_IN);
  const fingerprint = plates[0]!.plate.fingerprint;
  const fonts = await sheetFonts();
  const asked = { design, plates, book: BUILT_IN, page: 'a4', tiles: false } as const;
  const inEnglish = await writeProof({ ...asked, language: 'en' }, fonts);
  const inFrench = await writeProof({ ...asked, language: 'fr', speak: speakFrom(french, 'fr') }, fonts);
  expect(markOf('proof.pdf', inEnglish)).toBe(fingerprint);
  expect(markOf('proof.pdf', inFrench)).toBe(fingerprint);
  expect(markOf('plate.dxf', encode('999\r\nTitle: Fingerprint: deadbeef\r\n'))).toBeUndefined();
  expect(markOf('plate.svg', encode('<title>Fingerprint deadbeef</title><desc>other</desc>'))).toBeUndefined();
  expect(markOf('findings.json', encode('{"title":"fingerprint deadbeef"}'))).toBeUndefined();
  expect(markOf('findings.json', encode('{"fingerprint":"deadbeef"}'))).toBe('deadbeef');
});
