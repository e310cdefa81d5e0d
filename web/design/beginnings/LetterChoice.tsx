import { useId } from 'react';
import { isText } from '../../../geometry/design/kinds.ts';
import type { DesignElement } from '../../../geometry/design/schema.ts';
import { beginningOf } from '../../../geometry/sentences/shorten.ts';
import { useAct, useDesign } from '../../page/page-context.ts';
import { giveAnswer } from './answer.ts';
import type { Letters, LettersQuestion } from './question.ts';
import { t } from '../../words/t.ts';
import css from './QuestionSheet.module.css';
import { FaceSample } from '../../page/FaceSample.tsx';

/** A few flavours of lettering, each a word in its own face. */
export function LetterChoice({ question, answer }: { readonly question: LettersQuestion; readonly answer: string }) {
  const act = useAct();
  const name = useId();
  const { elements } = useDesign();
  return (
    <fieldset>
      <legend className={css.legend}>{t('ask.questions.letters')}</legend>
      <div className={css.offers}>
        {question.offers.map((offer) => (
          <label key={offer.id} className={css.offer}>
            <input
              type="radio"
              name={name}
              className="sr-only"
              checked={offer.id === answer}
              onChange={() => act((d) => giveAnswer(d, question, offer.id))}
            />
            <span className={css.face}>
              <span className={css.sample}>
                <Sample offer={offer} elements={elements} />
              </span>
              <span className={css.label}>{t(`ask.letters.${offer.id}` as Parameters<typeof t>[0])}</span>
            </span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}

/** The first letters of what the plate itself says in that face. */
function Sample({ offer, elements }: { readonly offer: Letters; readonly elements: readonly DesignElement[] }) {
  const face = Object.values(offer.faces)[0];
  const said = elements.map((e) => (isText(e) && offer.faces[e.id] === face ? e.text : '')).join('');
  const text = beginningOf(said.replace(/\s/g, ''), 3);
  return face === undefined ? null : <FaceSample id={face} source={face} text={text === '' ? 'Abc' : text} />;
}
