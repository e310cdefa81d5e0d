import { describe, expect, it } from 'vitest';
import { once } from '../figures/claim.ts';
import { checkMadeAgain } from '../../geometry/order-file/check-made-again.ts';
import { readOrderFile } from '../../geometry/order-file/read-order-file.ts';
import { nameOrderFile, writeOrderFile } from '../../geometry/order-file/write-order-file.ts';
import { damagesOf, flippedAt, resealed } from './damages.ts';
import { rawZip } from './raw-zip.ts';
import { encode, madeOrder, smallDesign } from './sound-order.ts';

const orders = once(async () => ({
  order: await madeOrder(smallDesign('OB')),
  other: await madeOrder(smallDesign('QA', 'Marrow Lane Perry')),
}));

describe('an order', () => {
  it('comes back as it was written, file by file, and has the same bytes each time', async () => {
    const { order } = await orders();
    const read = readOrderFile(order.bytes);
    if (read.kind !== 'sound') throw new Error(read.faults.map((f) => f.problem).join(' '));
    expect(read.design).toEqual(order.design);
    expect(read.files).toEqual([...order.cut, ...order.papers]);
    expect(read.manifest.approval).toEqual(order.design.approval);
    const again = writeOrderFile(order);
    expect(Buffer.compare(again.bytes, order.bytes)).toBe(0);
    expect(again.name).toBe(`Ottilie-Bastian-${order.fingerprint.slice(0, 16)}-order.zip`);
    expect(nameOrderFile('★', order.fingerprint)).toMatch(/^stencil-/);
  });

  it('is not written by another fingerprint, under names that are not plain, or with files that hide', async () => {
    const { order, other } = await orders();
    const wrong = [
      { ...order, fingerprint: other.fingerprint },
      ...['../a.txt', 'a b.txt', 'design.json', 'Order.txt', 'aux.txt', 'more.dxf'].map((name) => ({
        ...order,
        papers: [...order.papers, { name, bytes: encode('x'), role: 'other' as const }],
      })),
      { ...order, papers: [{ name: 'a.txt', bytes: rawZip([]), role: 'other' as const }] },
    ];
    for (const asked of wrong) expect(() => writeOrderFile(asked)).toThrow(RangeError);
  });

  it('carries the rules of a shop’s own that its fingerprint counts', async () => {
    const { order } = await orders();
    const { fingerprintOf } = await import('../../geometry/design/fingerprint.ts');
    const ownRules = { leastBridgeMm: 4 };
    const fingerprint = fingerprintOf(order.design, ownRules);
    const { approval: _, ...design } = order.design;
    const { bytes } = writeOrderFile({ design, cut: [], papers: [], fingerprint, ownRules });
    const read = readOrderFile(bytes);
    if (read.kind !== 'sound') throw new Error(read.faults.map((f) => f.problem).join(' '));
    expect(read.manifest.shopRules).toEqual(ownRules);
    expect(checkMadeAgain(read, [], ownRules)).toEqual([]);
    expect(checkMadeAgain(read, [], undefined).map((f) => f.problem)).toEqual([
      expect.stringMatching(/rules of another stock file/),
    ]);
  });
});

describe('damage', () => {
  it('is told of the file that has it, whatever its kind; none opens as sound', async () => {
    const { order, other } = await orders();
    expect(readOrderFile(other.bytes).kind).toBe('sound');
    const damages = damagesOf(order, other);
    expect(new Set(damages.map(({ name }) => name)).size).toBe(damages.length);
    expect(damages.length).toBeGreaterThan(60);
    const untold = damages.flatMap(({ name, bytes, file, says }) => {
      const read = readOrderFile(bytes);
      const faults = read.kind === 'unsound' ? read.faults : [];
      if (faults.some((fault) => fault.file === file && says.test(fault.problem))) return [];
      return [{ name, kind: read.kind, told: faults.map((fault) => `${fault.file}: ${fault.problem}`) }];
    });
    expect(untold).toEqual([]);
  });

  it('is looked for with archives that are sound but for it', async () => {
    const { order } = await orders();
    const read = readOrderFile(order.bytes);
    if (read.kind !== 'sound') throw new Error('unsound');
    const { manifestText } = await import('../../geometry/order-file/manifest.ts');
    const { designText } = await import('../../geometry/design/write-design.ts');
    const byHand = rawZip([
      { name: 'manifest.json', bytes: encode(manifestText(read.manifest)) },
      { name: 'design.json', bytes: encode(designText(read.design)) },
      ...read.files,
    ]);
    expect(readOrderFile(new Uint8Array(byHand))).toEqual(read);
  });

  it('is told as a missing design where nothing else is wrong, else as what is wrong', async () => {
    const { order } = await orders();
    const read = readOrderFile(order.bytes);
    if (read.kind !== 'sound') throw new Error('unsound');
    const { manifestText } = await import('../../geometry/order-file/manifest.ts');
    const manifest = { name: 'manifest.json', bytes: encode(manifestText(read.manifest)) };
    const told = (files: Parameters<typeof rawZip>[0]) => {
      const found = readOrderFile(new Uint8Array(rawZip(files)));
      return found.kind === 'unsound' ? found.faults.map((f) => [f.file, f.words.key]) : [];
    };
    expect(told([manifest, ...read.files])).toEqual([['design.json', 'orderFault.noDesign']]);
    expect(told(read.files)).toEqual([[undefined, 'orderFault.notOrder']]);
    const locked = read.files.map((f, i) => (i === 0 ? { ...f, flags: 1 } : f));
    expect(told([manifest, ...locked])).toContainEqual(['design.json', 'orderFault.missing']);
  });

  it('to a cut file that was listed anew shows when it is made again', async () => {
    const { order } = await orders();
    const { bytes, file } = resealed(order);
    const read = readOrderFile(bytes);
    if (read.kind !== 'sound') throw new Error(read.faults.map((f) => f.problem).join(' '));
    const faults = checkMadeAgain(read, order.cut, undefined);
    expect(faults.map((f) => [f.file, f.words.key])).toEqual([[file, 'orderFault.madeOther']]);
    const [first, second] = order.cut;
    const less = { ...read, files: read.files.filter(({ name }) => name !== first!.name) };
    expect(checkMadeAgain(less, order.cut, undefined).map((f) => f.words.key)).toEqual(['orderFault.madeAbsent']);
    const sound = readOrderFile(order.bytes);
    if (sound.kind !== 'sound') throw new Error('unsound');
    expect(checkMadeAgain(sound, order.cut, undefined)).toEqual([]);
    expect(checkMadeAgain(sound, [first!], undefined).map((f) => [f.file, f.words.key])).toEqual([
      [second!.name, 'orderFault.madeUnknown'],
    ]);
  });

  it('of one bit, anywhere in the archive, never opens as sound with other content', async () => {
    const { order } = await orders();
    const { approval: _, ...design } = order.design;
    const { fingerprint } = order;
    const papers = [{ name: 'order.txt', bytes: encode('Wrapped in paper, please.\n'), role: 'other' as const }];
    const { bytes } = writeOrderFile({ design, cut: [], papers, fingerprint });
    const whole = readOrderFile(bytes);
    if (whole.kind !== 'sound') throw new Error('unsound');
    const opened: number[] = [];
    for (let at = 0; at < bytes.length; at++) {
      const read = readOrderFile(flippedAt(bytes, at, at % 8));
      if (read.kind === 'sound') {
        expect(read).toEqual(whole);
        opened.push(at);
      }
    }
    // The last byte of a deflated file has bits that mean nothing (RFC 1951, 3.2.3): three files, three such bytes at most.
    expect(opened.length).toBeLessThanOrEqual(3);
  });

  it('of other kinds of file is told in a sentence', () => {
    const told = (bytes: Uint8Array) => {
      const read = readOrderFile(bytes);
      return read.kind === 'unsound' ? [read.isOrder, read.faults.map((f) => f.words.key)] : 'sound';
    };
    expect(told(new Uint8Array())).toEqual([false, ['orderFault.notZip']]);
    expect(told(encode('%PDF-1.7 and more that is no archive at all'))).toEqual([false, ['orderFault.notZip']]);
    expect(told(rawZip([]))).toEqual([false, ['orderFault.notOrder']]);
    expect(told(rawZip([{ name: 'photo.txt', bytes: encode('x') }]))).toEqual([false, ['orderFault.notOrder']]);
    expect(told(new Uint8Array(40_000_001))).toEqual([false, ['orderFault.large']]);
  });
});
