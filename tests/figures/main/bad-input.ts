import { loadFaces } from '../../../fonts/node-faces.ts';
import { ownFaceFrom } from '../../../fonts/own-face.ts';
import { createStore } from '../../../geometry/pipeline/solve-store.ts';
import { emptyDesign, newRingText } from '../../../geometry/design/defaults.ts';
import { readDesign } from '../../../geometry/design/read-design.ts';
import type { Design, RingText } from '../../../geometry/design/schema.ts';
import { designText } from '../../../geometry/design/write-design.ts';
import { makePlate } from '../../../geometry/pipeline/make-plate.ts';
import { BUILT_IN } from '../../../geometry/stock/built-in-stock.ts';
import { createSaver, type SavingState } from '../../../web/state/saving.ts';
import { t } from '../../../web/words/t.ts';
import type { Claim } from '../claim.ts';

/** Each case gives the sentence that a person is shown; undefined when nothing is said. */
const CASES: Readonly<Record<string, () => Promise<string | undefined>>> = {
  'empty text': () => said(withText('')),
  'text of 500 characters': () =>
    Promise.resolve(refused(readDesign(designText(withText('PERRY '.repeat(84).slice(0, 500)))))),
  'text of 200 characters': () => said(withText('PERRY '.repeat(40).slice(0, 200))),
  emoji: () => said(withText('PERRY \u{1F942}')),
  'a sign that the face lacks': () => said(withText('\u6885\u9152')),
  'diameter 0': () => said(withDiameter(0)),
  'diameter below 0': () => said(withDiameter(-300)),
  'absurd diameter': () => said(withDiameter(99_999)),
  'truncated design': () => Promise.resolve(refused(readDesign(designText(withText('PERRY')).slice(0, 400)))),
  'design of an unknown version': () =>
    Promise.resolve(refused(readDesign(JSON.stringify({ ...withText('PERRY'), version: 99 })))),
  'corrupt font': () => {
    const bytes = Uint8Array.from({ length: 4000 }, (_, i) => (i * 37) % 251);
    return Promise.resolve(refused(ownFaceFrom(bytes, 'broken.ttf')));
  },
  'storage full': async () => {
    const state = await savedOn(() => Promise.reject(new DOMException('no room', 'QuotaExceededError')));
    return state === 'full' ? t('saving.full') : undefined;
  },
};

export const BAD_INPUT_CLAIMS: readonly Claim[] = [
  {
    name: 'bad-input-answered-with-a-sentence',
    wanted: `all ${Object.keys(CASES).length}`,
    async measure() {
      const silent: string[] = [];
      for (const [name, sentenceOf] of Object.entries(CASES)) {
        const sentence = await sentenceOf();
        if (sentence === undefined || !/^[A-Z\u201c].*\w.*[.?]$/s.test(sentence)) silent.push(name);
      }
      const count = Object.keys(CASES).length;
      const unit = silent.length > 0 ? `of ${count} cases, silent: ${silent.join(', ')}` : `of ${count} cases`;
      return { value: count - silent.length, unit, ok: silent.length === 0 };
    },
  },
];

/** The worst thing said of the plate, when it is more than a note. */
async function said(design: Design): Promise<string | undefined> {
  const { faces } = await loadFaces(design);
  const { findings } = makePlate(design, 'large', faces, createStore(), BUILT_IN);
  return findings.find(({ severity }) => severity !== 'note')?.sentence;
}

function refused(read: object): string | undefined {
  return 'problem' in read && typeof read.problem === 'string' ? read.problem : undefined;
}

async function savedOn(set: () => Promise<void>): Promise<SavingState | undefined> {
  let state: SavingState | undefined;
  const saver = createSaver(set, (now) => (state = now));
  saver.schedule();
  await saver.flush();
  return state;
}

function withText(text: string): Design {
  const element: RingText = { ...newRingText('name', 'stardos-stencil-400'), text };
  return { ...emptyDesign(), elements: [element] };
}

function withDiameter(mm: number): Design {
  return { ...withText('PERRY'), plates: [{ id: 'large', name: 'Large', diameter: { mm }, quantity: 1 }] };
}
