import { readFileSync } from 'node:fs';
import { loadFaces } from '../../../fonts/node-faces.ts';
import type { Face } from '../../../geometry/adapters/face.ts';
import { readDesign } from '../../../geometry/design/read-design.ts';
import type { Design } from '../../../geometry/design/schema.ts';
import type { Finding } from '../../../geometry/findings.ts';
import { outlineBox } from '../../../geometry/measure/outline-box.ts';
import { makePlate } from '../../../geometry/pipeline/make-plate.ts';
import { sayWhereItHolds } from '../../../geometry/pipeline/where-it-holds.ts';
import { createStore } from '../../../geometry/pipeline/solve-store.ts';
import { BUILT_IN } from '../../../geometry/stock/built-in-stock.ts';
import { applyMend } from '../../../web/state/actions/apply-mend.ts';
import { giveAnswer } from '../../../web/design/beginnings/answer.ts';
import type { LettersQuestion, TextQuestion } from '../../../web/design/beginnings/question.ts';
import { QUESTIONS } from '../../../web/design/beginnings/questions.ts';
import { BEGINNING_IDS, type BeginningId } from '../../../web/state/beginning-ids.ts';

/** A beginning with answers typed into it, to be made at both sizes. */
export interface AnswerCase {
  readonly beginning: BeginningId;
  /** The lettering chosen; absent: as it comes. */
  readonly letters?: string;
  /** What is typed, by question. */
  readonly answers: Readonly<Record<string, string>>;
}

export interface AnswerOutcome {
  readonly one: AnswerCase;
  /** Sentences of what stops the cut, at either size; after the letters a face lacks were written as it was offered. */
  readonly stops: readonly string[];
  /** Each text that is refused is told at which length or size it would hold. */
  readonly told: boolean;
  /** Letters were missing, and what was offered in their place was taken. */
  readonly rewritten: boolean;
  /** Greatest difference between the sizes that initials are drawn at, as a share. */
  readonly unlike: number;
}

/** At most so many units kept: pairs of letters come in rows of the same letters. */
const store = createStore({ shapes: 4000, units: 20_000 });
const designs = new Map<BeginningId, Design>(BEGINNING_IDS.map((id) => [id, demo(id)]));

export function textsOf(id: BeginningId): readonly TextQuestion[] {
  return QUESTIONS[id].filter((q): q is TextQuestion => q.kind === 'text' || q.kind === 'date');
}

export function lettersOf(id: BeginningId): readonly string[] {
  const asked = QUESTIONS[id].find((q): q is LettersQuestion => q.kind === 'letters');
  return asked?.offers.map((offer) => offer.id) ?? [];
}

/** Makes a case at both sizes and says what stops it. */
export async function runAnswers(one: AnswerCase): Promise<AnswerOutcome> {
  let design = answered(one);
  const { faces } = await loadFaces(design);
  let [rewritten, unlike, told] = [false, 0, true];
  const stops: string[] = [];
  for (const plate of ['large', 'half']) {
    let made = makePlate(design, plate, faces, store, BUILT_IN);
    for (const missing of made.findings.filter(lacksLetters)) {
      rewritten = true;
      design = applyMend(design, missing.mend!.change).design;
    }
    if (rewritten) made = makePlate(design, plate, faces, store, BUILT_IN);
    if (made.verdict === 'stop') {
      const make = (tried: Design) => makePlate(tried, plate, faces, store, BUILT_IN);
      made = sayWhereItHolds(design, made, make);
      told &&= isTold(made);
    }
    stops.push(...made.findings.filter((f) => f.severity === 'stop').map((f) => `${plate}: ${f.sentence}`));
    unlike = Math.max(
      unlike,
      unlikeSizes(made.layout.shapes, (id) => faceOf(design, id, faces)),
    );
  }
  return { one, stops, told, rewritten, unlike };
}

/** Every text that stops the cut has a length or a size named. */
function isTold({ findings }: ReturnType<typeof makePlate>): boolean {
  const named = new Set(findings.filter((f) => f.code === 'holds-at').flatMap((f) => f.elementIds));
  return findings.every((f) => f.severity !== 'stop' || f.elementIds.some((id) => named.has(id)));
}

const lacksLetters = (f: Finding): boolean => f.code === 'missing-glyph' && f.mend !== undefined;

function answered({ beginning, letters, answers }: AnswerCase): Design {
  let design = designs.get(beginning)!;
  for (const question of QUESTIONS[beginning]) {
    const answer = question.kind === 'letters' ? letters : answers[question.id];
    if (answer !== undefined) design = giveAnswer(design, question, answer).design;
  }
  return design;
}

function faceOf(design: Design, id: string, faces: { get(id: string): Face | undefined }): Face | undefined {
  const element = design.elements.find((e) => e.id === id);
  return element && 'face' in element ? faces.get(element.face) : undefined;
}

/** Each initial's drawn height over that of its glyph in the face is the size it is set at. */
function unlikeSizes(
  shapes: ReturnType<typeof makePlate>['layout']['shapes'],
  face: (elementId: string) => Face | undefined,
): number {
  const sizes = shapes.flatMap(({ elementId, label, outline }) => {
    const char = /^letter (.)$/u.exec(label)?.[1];
    const glyph = elementId === 'initials' && char !== undefined ? face(elementId)?.glyph(char) : undefined;
    const [drawn, own] = [outlineBox(outline), glyph && outlineBox(glyph.outline)];
    return drawn && own ? [(drawn.maxY - drawn.minY) / (own.maxY - own.minY)] : [];
  });
  return sizes.length < 2 ? 0 : Math.max(...sizes) / Math.min(...sizes) - 1;
}

/** As it ships, at full and at half size. */
function demo(id: BeginningId): Design {
  const read = readDesign(readFileSync(new URL(`../../../web/demo/${id}.json`, import.meta.url), 'utf8'));
  if ('problem' in read) throw new Error(read.problem);
  const [large] = read.design.plates;
  const plates = [
    { ...large!, id: 'large', diameter: 'fit' as const },
    { ...large!, id: 'half', diameter: { share: 0.5 } },
  ];
  return { ...read.design, plates };
}
