import { isText } from '../../../geometry/design/kinds.ts';
import type { Design, DesignElement } from '../../../geometry/design/schema.ts';
import { LONGEST_TITLE } from '../../state/actions/agreed/set-title.ts';
import type { Change } from '../../state/change.ts';
import { t } from '../../words/t.ts';
import { giveAnswer, readAnswer } from './answer.ts';
import type { Beginning } from './beginnings.ts';
import type { Question } from './question.ts';

/**
 * An answer given to a question of a beginning, with what follows from it: lines above and below close up over one that
 * was emptied, and the design is called by the person's words as long as nobody called it otherwise.
 */
export function answerBeginning(
  design: Design,
  beginning: Beginning,
  question: Question,
  answer: string,
  capitals?: boolean,
): Change {
  const change = giveAnswer(design, question, answer, capitals);
  const closed = closeGaps(design, change.design, beginning.design);
  return { ...change, design: retitled(design, closed, beginning) };
}

/** What the person's own words would call it; empty where they say nothing. */
function calledBy(design: Design, { questions }: Beginning): string {
  const said = questions.map((q) =>
    q.kind === 'text' && q.names === true ? (readAnswer(design, q) ?? '').trim() : '',
  );
  return Array.from(said.filter((words) => words !== '').join(' '))
    .slice(0, LONGEST_TITLE)
    .join('');
}

function retitled(before: Design, after: Design, beginning: Beginning): Design {
  const [was, is, kind] = [calledBy(before, beginning), calledBy(after, beginning), t(`begin.kinds.${beginning.id}`)];
  const ours = before.title === kind || before.title === was;
  return was === is || !ours ? after : { ...after, title: is === '' ? kind : is };
}

/** Lines moved up or down by what those between them, as the beginning has them, no longer take or take again. */
function closeGaps(before: Design, after: Design, original: Design): Design {
  const changed = original.elements.filter((e) => isEmpty(before, e.id) !== isEmpty(after, e.id));
  const lines = original.elements.filter(isLine);
  let next = after;
  for (const gone of changed.filter(isLine)) {
    const [above] = lines.filter((e) => e.y > gone.y).sort((a, b) => a.y - b.y);
    const [below] = lines.filter((e) => e.y < gone.y).sort((a, b) => b.y - a.y);
    // from the middle of what is left between the neighbours to where the gap is as it was
    const gaps = [above && above.y - gone.y - halves(above, gone), below && gone.y - below.y - halves(below, gone)];
    const known = gaps.filter((gap) => gap !== undefined);
    const slot = heightOf(gone) + known.reduce((sum, gap) => sum + gap, 0) / Math.max(1, known.length);
    const by = (isEmpty(after, gone.id) ? slot : -slot) / 2;
    const elements = next.elements.map((e): DesignElement => {
      const placed = lines.find((line) => line.id === e.id);
      if (placed === undefined || !('y' in e) || placed.id === gone.id || placed.y === gone.y) return e;
      return { ...e, y: rounded(e.y + (placed.y > gone.y ? -by : by)) };
    });
    next = { ...next, elements };
  }
  return next;
}

type Line = Extract<DesignElement, { readonly y: number }>;

/** What stands on the upright line through the centre, one below the other. */
function isLine(element: DesignElement): element is Line {
  return 'y' in element && element.x === 0;
}

function isEmpty(design: Design, id: string): boolean {
  const element = design.elements.find((e) => e.id === id);
  return element === undefined || (isText(element) && element.text.trim() === '');
}

function heightOf(line: Line): number {
  return line.kind === 'lineText' ? line.capHeight : line.size;
}

function halves(a: Line, b: Line): number {
  return (heightOf(a) + heightOf(b)) / 2;
}

/** To a millionth of the radius: what closes up and opens again stands where it stood. */
function rounded(y: number): number {
  return Math.max(-1, Math.min(1, Math.round(y * 1e6) / 1e6));
}
