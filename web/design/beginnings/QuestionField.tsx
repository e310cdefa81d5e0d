import { useState } from 'react';
import { LONGEST_TEXT } from '../../../geometry/design/limits.ts';
import type { Finding } from '../../../geometry/findings.ts';
import { useAct, useCurrentPlate, useDesign, usePage, useUi } from '../../page/page-context.ts';
import { applyMend } from '../../state/actions/apply-mend.ts';
import { readAnswer, shownAs } from './answer.ts';
import { answerBeginning } from './answer-all.ts';
import type { Beginning } from './beginnings.ts';
import type { Question, TextQuestion } from './question.ts';
import { Button } from '../../ui/Button.tsx';
import { Check } from '../../ui/Check.tsx';
import { Field } from '../../ui/fields/Field.tsx';
import fieldCss from '../../ui/fields/Field.module.css';
import { findingWords, mendWords } from '../../words/say/finding-words.ts';
import { t } from '../../words/t.ts';
import { Fold } from '../../ui/Fold.tsx';
import { later } from '../../ui/later.tsx';
import { LetterChoice } from './LetterChoice.tsx';
import { DateTool } from '../panels/text/DateTool.tsx';
import css from './QuestionSheet.module.css';

// Our drawings and what draws them are most of what the questions need, and few ask for one.
const MotifChoice = later(async () => (await import('./MotifChoice.tsx')).MotifChoice);

interface Asked<Q extends Question> {
  readonly beginning: Beginning;
  readonly question: Q;
}

/** One question of a beginning; nothing when the design no longer has what it is about. */
export function QuestionField({ beginning, question }: Asked<Question>) {
  const design = useDesign();
  const answer = readAnswer(design, question);
  if (answer === undefined) return null;
  switch (question.kind) {
    case 'letters':
      return <LetterChoice question={question} answer={answer} />;
    case 'motif':
      return <MotifChoice question={question} answer={answer} />;
    default:
      return <Typed beginning={beginning} question={question} answer={answer} />;
  }
}

/**
 * What is typed stays in the field as it was typed, though the plate shows it in capitals: letters that change under
 * the hand make the cursor jump.
 */
function Typed({ beginning, question, answer }: Asked<TextQuestion> & { readonly answer: string }) {
  const { design: store } = usePage();
  const act = useAct();
  const { trouble, mend } = useTrouble(question);
  const [typed, setTyped] = useState(answer);
  const [capitals, setCapitals] = useState(() => areCapitals(answer) ?? question.capitals === true);
  const value =
    shownAs(question, typed, capitals) === answer || (typed.trim() === '' && answer === '') ? typed : answer;
  function write(next: string, inCapitals = capitals): void {
    setTyped(next);
    act((d) => answerBeginning(d, beginning, question, next, inCapitals));
  }

  const field = (
    <Field
      label={t(`ask.questions.${question.id}` as Parameters<typeof t>[0])}
      problem={trouble}
      hint={hintFor(question, value)}
    >
      {({ id, describedBy, invalid }) => (
        <input
          id={id}
          type="text"
          className={fieldCss.control}
          value={value}
          aria-describedby={describedBy}
          aria-invalid={invalid || undefined}
          autoComplete="off"
          autoCapitalize={capitals ? 'characters' : 'sentences'}
          inputMode={question.figures === true ? 'numeric' : 'text'}
          enterKeyHint="next"
          spellCheck={false}
          onFocus={(e) => e.target.select()}
          onChange={(e) => {
            write(e.target.value);
          }}
          onBlur={() => store.getState().closeMerge()}
        />
      )}
    </Field>
  );
  const more = (
    <>
      {mend !== undefined && (
        <Button kind="plain" onClick={mend.take}>
          {mend.label}
        </Button>
      )}
      {areCapitals(value) !== undefined && (
        <Check
          label={t('ask.capitals')}
          checked={capitals}
          onChange={(on) => {
            setCapitals(on);
            const asTyped = !on && areCapitals(value) === true ? withoutCapitals(value) : value;
            write(asTyped, on);
            store.getState().closeMerge();
          }}
        />
      )}
    </>
  );
  return (
    <div className={css.typed}>
      {field}
      {more}
      {question.kind === 'date' && (
        <Fold title={t('dates.fold')}>
          <DateTool
            text={value}
            most={LONGEST_TEXT}
            onWrite={(next) => {
              write(next);
              store.getState().closeMerge();
            }}
          />
        </Fold>
      )}
    </div>
  );
}

function hintFor(question: TextQuestion, value: string): string | undefined {
  if (value.trim() === '') return t('ask.empty');
  if (value.length > LONGEST_TEXT) return t('say.longest', { most: LONGEST_TEXT });
  return question.kind === 'date' ? t('ask.dateHint') : undefined;
}

/** Whether a text is all in capitals; undefined for one without letters that have any. */
function areCapitals(text: string): boolean | undefined {
  return text.toLowerCase() === text.toUpperCase() ? undefined : text === text.toUpperCase();
}

/** Words of which only the first letter is a capital: what was typed in capitals says no more. */
function withoutCapitals(text: string): string {
  return text
    .toLowerCase()
    .replace(/(^|[^\p{L}\p{N}’'])(\p{L})/gu, (_, before: string, letter: string) => before + letter.toUpperCase());
}

/** What stops the cut because of what is said here, in words, and the change that helps. */
function useTrouble(question: TextQuestion): {
  readonly trouble: string | undefined;
  readonly mend: { readonly label: string; readonly take: () => void } | undefined;
} {
  const act = useAct();
  const unit = useUi((s) => s.unit);
  const { plate } = useCurrentPlate();
  const { elements } = useDesign();
  const ids = new Set(question.into.map(({ element }) => element));
  const isOurs = (f: Finding): boolean => f.severity === 'stop' && f.elementIds.some((id) => ids.has(id));
  const filled = elements.some((e) => ids.has(e.id) && 'text' in e && e.text !== '');
  const found = filled ? plate?.findings.find(isOurs) : undefined;
  const mend = found?.mend;
  return {
    trouble: found && findingWords(found, unit),
    mend: mend && { label: mendWords(mend, unit), take: () => act((d) => applyMend(d, mend.change)) },
  };
}
