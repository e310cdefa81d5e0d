import { expect, test } from 'vitest';
import { border, codes, lay, lineText, ringText } from './set-up.ts';

test('missing characters are named, the rest is laid out, the mend leaves them out', async () => {
  const layout = await lay([lineText({ text: 'Oak 👩‍🌾🍐 Ω 12' })]);
  const finding = layout.findings[0];
  expect(codes(layout)).toEqual(['stop missing-glyph']);
  expect(finding?.sentence).toContain('👩‍🌾 🍐 Ω');
  expect(finding?.mend?.change).toEqual({ kind: 'replace-text', elementId: 'line', text: 'Oak   12' });
  expect(layout.shapes.map((s) => s.label)).toEqual(['letter O', 'letter a', 'letter k', 'figure 1', 'figure 2']);
});

test('white space of every kind is a space; marks that print nothing are passed over', async () => {
  const plain = await lay([lineText({ text: 'No 7 & 8' })]);
  const odd = await lay([lineText({ text: '\ufeff\tNo\u00a07\u2009&\u200b\r\n8\u3000' })]);
  expect(odd.findings).toEqual([]);
  expect(odd.shapes.map((s) => s.placement)).toEqual(plain.shapes.map((s) => s.placement));
  expect(plain.shapes.map((s) => s.word)).toEqual([0, 0, 1, 2, 3]);
});

test('an accent typed as a mark of its own is the same letter', async () => {
  const [one, two] = [await lay([lineText({ text: 'é' })]), await lay([lineText({ text: 'e\u0301' })])];
  expect(two.shapes[0]?.storeKey).toBe(one.shapes[0]?.storeKey);
});

test('what cannot be drawn is said, and every element keeps a place on the stage', async () => {
  const layout = await lay([
    ringText({ id: 'a', text: '  ' }),
    ringText({ id: 'b', inner: 0.9, outer: 0.8 }),
    ringText({ id: 'c', face: 'no-such-face' }),
    lineText({ id: 'd', text: '' }),
    border({ id: 'e', inner: 0.5, outer: 0.5 }),
    border({ id: 'f', style: 'beads', inner: 0, outer: 0.4 }),
    lineText({ id: 'g', text: 'FAR TOO LONG FOR THIS', capHeight: 0.4 }),
  ]);
  expect(layout.findings.map((f) => `${f.elementIds[0]} ${f.severity} ${f.code}`)).toEqual([
    'a note empty-text',
    'b stop band-upside-down',
    'c stop unknown-face',
    'd note empty-text',
    'e stop band-upside-down',
    'f stop border-too-tight',
    'g stop text-outside-plate',
  ]);
  expect(layout.extents.map((extent) => extent.elementId)).toEqual(['a', 'b', 'c', 'd', 'e', 'f', 'g']);
  expect(new Set(layout.shapes.map((s) => s.id)).size).toBe(layout.shapes.length);
});

test('the mend of a text that overhangs brings it inside', async () => {
  for (const [x, y] of [
    [0, 0],
    [0.3, 0.2],
  ] as const) {
    const text = lineText({ text: 'OVERHANG', capHeight: 0.5, x, y });
    const change = (await lay([text])).findings.find((f) => f.code === 'text-outside-plate')?.mend?.change;
    if (change?.kind !== 'scale-text') throw new Error('a change of size was expected');
    expect(codes(await lay([{ ...text, capHeight: text.capHeight * change.share }]))).not.toContain(
      'stop text-outside-plate',
    );
  }
});

test('the same design always gives the same layout', async () => {
  const elements = [ringText({ text: 'AVA To' }), lineText({ text: 'LT 7.' }), border({ style: 'rope' })];
  const first = JSON.stringify(await lay(elements));
  await lay([ringText({ text: 'AVA To', middleDeg: 33 })]);
  expect(JSON.stringify(await lay(elements))).toBe(first);
});
