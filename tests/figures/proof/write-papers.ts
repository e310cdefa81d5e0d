import { createHash } from 'node:crypto';
import { writeSpecSheet } from '../../../geometry/files/paper/spec-sheet.ts';
import { writeProof } from '../../../geometry/proof/write-proof.ts';
import { BUILT_IN } from '../../../geometry/stock/built-in-stock.ts';
import { speakFromFiles } from './speak-from-files.ts';
import { asked, fonts, QUOTE, SHOP, shipped } from '../../proof/set-up.ts';

// Prints the SHA-256 of a proof and a spec sheet, in German: run in processes of other zones and languages.
const { design, plates } = await shipped('golden-wedding');
const manner = { page: 'a4', language: 'de', speak: speakFromFiles('de') } as const;
const proof = await writeProof(asked({ design, plates, tiles: true, quote: QUOTE, shop: SHOP, ...manner }), fonts);
const sheet = await writeSpecSheet(design, plates, fonts, BUILT_IN, manner);
console.log([proof, sheet].map((bytes) => createHash('sha256').update(bytes).digest('hex')).join(' '));
