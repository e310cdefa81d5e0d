import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { checkMadeAgain } from '../../geometry/order-file/check-made-again.ts';
import { markedBefore } from '../../geometry/order-file/marks.ts';
import type { SoundOrder } from '../../geometry/order-file/order-file.ts';
import { readOrderFile } from '../../geometry/order-file/read-order-file.ts';
import { manifestText } from '../../geometry/order-file/manifest.ts';
import { designText } from '../../geometry/design/write-design.ts';
import { rawZip } from './raw-zip.ts';
import { approved, encode, madeOrder, smallDesign } from './sound-order.ts';

/** Written before files carried the whole fingerprint. */
const OLD = readFileSync(new URL('version-1-order.zip', import.meta.url));

function sound(bytes: Uint8Array): SoundOrder {
  const read = readOrderFile(bytes);
  if (read.kind !== 'sound') throw new Error(read.faults.map((f) => f.problem).join(' '));
  return read;
}

it('an order of version 1 is read, and told to be compared by eye', () => {
  const { manifest, byEye } = sound(OLD);
  expect(manifest.version).toBe(1);
  expect(byEye.map((name) => name.replace(/.*(dxf|svg)$/, '$1')).sort()).toEqual([
    'dxf',
    'findings.json',
    'proof.pdf',
    'spec-sheet.pdf',
    'svg',
  ]);
});

it('its cut files are compared as such an order marked them, byte for byte', async () => {
  const order = sound(OLD);
  const { cut, fingerprint } = await madeOrder(smallDesign('OB'));
  expect(order.manifest.fingerprint).toBe(fingerprint);
  const before = cut.map(({ name, bytes }) => markedBefore(name, bytes, fingerprint));
  const old = order.files.filter(({ role }) => role === 'cut');
  // The beginning only: how plates are drawn may change from one version to the next.
  const head = ({ name, bytes }: { name: string; bytes: Uint8Array }) => [
    name,
    new TextDecoder().decode(bytes).slice(0, 300),
  ];
  expect(before.map(head)).toEqual(old.map(head));
  const marked = { ...order, files: before.map((file) => ({ ...file, role: 'cut' as const })) };
  expect(checkMadeAgain(marked, cut, undefined)).toEqual([]);
  const other = marked.files.map((file, i) => (i === 0 ? { ...file, bytes: file.bytes.slice(1) } : file));
  expect(checkMadeAgain({ ...marked, files: other }, cut, undefined).map((f) => f.file)).toEqual([other[0]!.name]);
});

it('an order of now with eight digits on a file is none of ours; an approval of eight is told', async () => {
  const { order } = { order: sound((await madeOrder(smallDesign('OB'))).bytes) };
  expect(order.byEye).toEqual([]);
  const { createHash } = await import('node:crypto');
  const listed = (name: string, bytes: Uint8Array) => ({
    name,
    bytes: bytes.length,
    sha256: createHash('sha256').update(bytes).digest('hex'),
  });
  const { manifest } = order;
  const files = order.files.map((file) =>
    file.role === 'cut' ? { ...file, ...markedBefore(file.name, file.bytes, manifest.fingerprint) } : file,
  );
  const design = approved(order.design, manifest.fingerprint.slice(0, 8));
  const text = encode(designText(design));
  const zipped = (theirs: typeof files) =>
    rawZip([
      {
        name: 'manifest.json',
        bytes: encode(
          manifestText({
            ...manifest,
            approval: design.approval!,
            files: [
              { ...listed('design.json', text), role: 'design' },
              ...theirs.map(({ name, role, bytes }) => ({ ...listed(name, bytes), role })),
            ],
          }),
        ),
      },
      { name: 'design.json', bytes: text },
      ...theirs,
    ]);
  const read = readOrderFile(zipped(files));
  expect(read.kind === 'unsound' && read.faults.map((f) => f.words.key)).toEqual([
    'orderFault.cutOther',
    'orderFault.cutOther',
  ]);
  expect(sound(zipped([...order.files])).byEye).toEqual(['design.json']);
});
