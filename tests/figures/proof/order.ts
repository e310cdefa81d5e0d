import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { checkMadeAgain } from '../../../geometry/order-file/check-made-again.ts';
import { readOrderFile } from '../../../geometry/order-file/read-order-file.ts';
import { writeOrderFile } from '../../../geometry/order-file/write-order-file.ts';
import { damagesOf, flippedAt, resealed } from '../../order-file/damages.ts';
import { readElsewhere } from '../../order-file/read-elsewhere.ts';
import { madeOrder, smallDesign } from '../../order-file/sound-order.ts';
import { type Claim, once } from '../claim.ts';

const orders = once(async () => ({
  order: await madeOrder(smallDesign('OB')),
  other: await madeOrder(smallDesign('QA', 'Marrow Lane Perry')),
}));

/** An order in one file: what it proves, and to whom. */
export const ORDER_CLAIMS: readonly Claim[] = [
  {
    name: 'order-kinds-of-damage-told',
    wanted: 'all of 60 and more kinds, each of its file; none opens as sound',
    async measure() {
      const { order, other } = await orders();
      const damages = damagesOf(order, other);
      const told = damages.filter(({ bytes, file, says }) => {
        const read = readOrderFile(bytes);
        return read.kind === 'unsound' && read.faults.some((f) => f.file === file && says.test(f.problem));
      });
      const again = resealed(order);
      const read = readOrderFile(again.bytes);
      const found =
        read.kind === 'sound' && checkMadeAgain(read, order.cut, undefined).some(({ file }) => file === again.file);
      const [value, of] = [told.length + (found ? 1 : 0), damages.length + 1];
      return { value: `${value} of ${of}`, unit: 'kinds', ok: value === of && of > 60 };
    },
  },
  {
    name: 'order-flipped-bits-opened',
    wanted: '0 with other content, one bit in every byte',
    async measure() {
      const { order } = await orders();
      const read = readOrderFile(order.bytes);
      // Every byte of what describes the files, every 97th of the rest.
      const body = order.bytes.length - 1500;
      let [tried, opened] = [0, 0];
      for (let at = 0; at < order.bytes.length; at += at < 400 || at > body ? 1 : 97) {
        tried++;
        const harmed = readOrderFile(flippedAt(order.bytes, at, at % 8));
        if (harmed.kind === 'sound' && !Buffer.from(JSON.stringify(harmed)).equals(Buffer.from(JSON.stringify(read)))) {
          opened++;
        }
      }
      return { value: `${opened} of ${tried}`, unit: 'flips', ok: opened === 0 && read.kind === 'sound' };
    },
  },
  {
    name: 'order-same-bytes',
    wanted: 'made twice, the same',
    async measure() {
      const { order } = await orders();
      const again = await madeOrder(smallDesign('OB'));
      const ok =
        Buffer.compare(order.bytes, again.bytes) === 0 && writeOrderFile(order).bytes.length === order.bytes.length;
      return { value: ok ? order.bytes.length : 'other bytes', unit: ok ? 'bytes twice' : '', ok };
    },
  },
  {
    name: 'order-read-by-another-reader',
    wanted: 'Python’s zipfile and hashlib agree with the manifest on every file',
    async measure() {
      const { order } = await orders();
      const read = readOrderFile(order.bytes);
      if (read.kind !== 'sound') return { value: 'unsound', unit: '', ok: false };
      const folder = mkdtempSync(join(tmpdir(), 'order-'));
      try {
        const path = join(folder, 'order.zip');
        writeFileSync(path, order.bytes);
        const version = execFileSync('python3', ['--version'], { encoding: 'utf8' }).trim();
        const { firstBad, files } = readElsewhere(path);
        const alike = read.manifest.files.filter(({ name, bytes, sha256 }) =>
          files.some((f) => f.name === name && f.bytes === bytes && f.sha256 === sha256),
        );
        const ok =
          firstBad === null && alike.length === files.length - 1 && alike.length === read.manifest.files.length;
        return { value: `${alike.length} of ${files.length - 1}`, unit: `files, ${version}`, ok };
      } finally {
        rmSync(folder, { recursive: true });
      }
    },
  },
];
