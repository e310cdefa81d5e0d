import { useState } from 'react';
import { useAct, useDesign, usePage } from '../../page/page-context.ts';
import { giveAnswer, readAnswer, shownAs } from './answer.ts';
import type { Question, TextQuestion } from './question.ts';
import { Field } from '../../ui/fields/Field.tsx';
import fieldCss from '../../ui/fields/Field.module.css';
import { t } from '../../words/t.ts';
import { Fold } from '../../ui/Fold.tsx';
import { LetterChoice } from './LetterChoice.tsx';
import { MotifChoice } from './MotifChoice.tsx';
import { DateTool } from '../panels/text/DateTool.tsx';

/** One question of a beginning; nothing when the design no longer has what it is about. */
export function QuestionField({ question }: { readonly question: Question }) {
  const design = useDesign();
  const answer = readAnswer(design, question);
  if (answer === undefined) return null;
  switch (question.kind) {
    case 'letters':
      return <LetterChoice question={question} answer={answer} />;
    case 'motif':
      return <MotifChoice question={question} answer={answer} />;
    default:
      return <Typed question={question} answer={answer} />;
  }
}

/**
 * What is typed stays in the field as it was typed, though the plate shows it in capitals: letters that change under
 * the hand make the cursor jump.
 */
function Typed({ question, answer }: { readonly question: TextQuestion; readonly answer: string }) {
  const { design: store } = usePage();
  const act = useAct();
  const [typed, setTyped] = useState(answer);
  const value = shownAs(question, typed) === answer || (typed.trim() === '' && answer === '') ? typed : answer;
  function write(next: string): void {
    setTyped(next);
    act((d) => giveAnswer(d, question, next));
  }

  const field = (
    <Field
      label={t(`ask.questions.${question.id}` as Parameters<typeof t>[0])}
      hint={answer.trim() === '' ? t('ask.empty') : question.kind === 'date' ? t('ask.dateHint') : undefined}
    >
      {({ id, describedBy }) => (
        <input
          id={id}
          type="text"
          className={fieldCss.control}
          value={value}
          maxLength={question.most}
          aria-describedby={describedBy}
          autoComplete="off"
          autoCapitalize={question.capitals === true ? 'characters' : 'sentences'}
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
  if (question.kind !== 'date') return field;
  return (
    <>
      {field}
      <Fold title={t('dates.fold')}>
        <DateTool
          text={value}
          most={question.most}
          onWrite={(next) => {
            write(next);
            store.getState().closeMerge();
          }}
        />
      </Fold>
    </>
  );
}
