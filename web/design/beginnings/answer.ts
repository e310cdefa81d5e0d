import { isText } from '../../../geometry/design/kinds.ts';
import { LONGEST_TEXT } from '../../../geometry/design/limits.ts';
import type { Design, DesignElement } from '../../../geometry/design/schema.ts';
import { editElement } from '../../state/actions/elements/edit-element.ts';
import { setFace } from '../../state/actions/elements/set-face.ts';
import { setText } from '../../state/actions/elements/set-text.ts';
import type { Change } from '../../state/change.ts';
import { initialsOf } from './initials.ts';
import type { LettersQuestion, MotifQuestion, Question, TextQuestion } from './question.ts';

/**
 * What a question's answer is on a design as it stands; undefined when the design has nothing left to take it, so that
 * the question need not be asked. Answers live in the design alone: undo, a saved design and a link know them.
 */
export function readAnswer(design: Design, question: Question): string | undefined {
  switch (question.kind) {
    case 'motif': {
      const drawings = question.elements.map((id) => elementOf(design, id)).filter((e) => e !== undefined);
      const motif = drawings.find((e) => e.kind === 'motif');
      // a drawing of the person's own is an answer too, and none of those offered
      if (motif === undefined) return drawings.some((e) => e.kind === 'artwork') ? '' : undefined;
      return motif.motif;
    }
    case 'letters':
      return readLetters(design, question);
    default:
      return readText(design, question);
  }
}

/** The design with an answer given; typing in one field is one step of undo. */
export function giveAnswer(design: Design, question: Question, answer: string, capitals?: boolean): Change {
  switch (question.kind) {
    case 'motif':
      return { design: giveMotif(design, question, answer), undo: 'step' };
    case 'letters':
      return { design: giveLetters(design, question, answer), undo: 'step' };
    default:
      return { design: giveText(design, question, answer, capitals), undo: 'merge', about: `answer:${question.id}` };
  }
}

/** What the plate shows for what was typed: in capitals or as typed, no more than one text may have. */
export function shownAs(question: TextQuestion, typed: string, capitals = question.capitals === true): string {
  const answer = typed.replace(/\s+/g, ' ').slice(0, LONGEST_TEXT);
  return capitals ? answer.toUpperCase() : answer;
}

function readText(design: Design, question: TextQuestion): string | undefined {
  for (const { element, around } of question.into) {
    const found = elementOf(design, element);
    if (found === undefined || !isText(found)) continue;
    const [before = '', after = ''] = (around ?? '{}').split('{}');
    const { text } = found;
    if (text === '') return '';
    const whole = text.startsWith(before) && text.endsWith(after) && text.length >= before.length + after.length;
    return whole ? text.slice(before.length, text.length - after.length) : text;
  }
  return undefined;
}

function giveText(design: Design, question: TextQuestion, typed: string, capitals?: boolean): Design {
  const answer = shownAs(question, typed, capitals);
  let next = design;
  for (const { element, around } of question.into) {
    next = setText(next, element, answer.trim() === '' ? '' : (around ?? '{}').replace('{}', () => answer)).design;
  }
  if (question.initials === undefined) return next;
  return setText(next, question.initials, initialsOf(answer).join(' & ')).design;
}

function readLetters(design: Design, question: LettersQuestion): string | undefined {
  const ids = new Set(question.offers.flatMap((o) => Object.keys(o.faces)));
  const texts = design.elements.filter((e) => ids.has(e.id) && isText(e));
  if (texts.length === 0) return undefined;
  const same = (faces: Readonly<Record<string, string>>): boolean =>
    texts.every((e) => isText(e) && (faces[e.id] ?? e.face) === e.face);
  return question.offers.find((o) => same(o.faces))?.id ?? '';
}

function giveLetters(design: Design, question: LettersQuestion, answer: string): Design {
  const faces = question.offers.find((o) => o.id === answer)?.faces ?? {};
  return Object.entries(faces).reduce((d, [id, face]) => setFace(d, face, id).design, design);
}

function giveMotif(design: Design, question: MotifQuestion, answer: string): Design {
  if (!question.offers.includes(answer)) return design;
  return question.elements.reduce(
    (d, id) =>
      editElement(d, id, (e): DesignElement => {
        if (e.kind === 'artwork') {
          const { name: _name, path: _path, ...place } = e;
          return { ...place, kind: 'motif', motif: answer };
        }
        if (e.kind !== 'motif' || e.motif === answer) return e;
        // what was set about the one drawing means nothing to the other
        const { options: _options, ...rest } = e;
        return { ...rest, motif: answer };
      }),
    design,
  );
}

function elementOf(design: Design, id: string): DesignElement | undefined {
  return design.elements.find((e) => e.id === id);
}
