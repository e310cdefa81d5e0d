import { useId } from 'react';
import { motifById } from '../../../geometry/motifs/catalogue.ts';
import { useAct, useDesign } from '../../page/page-context.ts';
import { giveAnswer } from './answer.ts';
import type { MotifQuestion } from './question.ts';
import { motifName } from '../../words/say/record-words.ts';
import { t } from '../../words/t.ts';
import { useMotifPictures } from '../artwork/use-motif-pictures.ts';
import { AddDrawing } from '../panels/text/AddDrawing.tsx';
import css from './QuestionSheet.module.css';

/** A few drawings of ours to choose from. */
export function MotifChoice({ question, answer }: { readonly question: MotifQuestion; readonly answer: string }) {
  const act = useAct();
  const design = useDesign();
  const [element] = question.elements;
  const drawn = design.elements.find((e) => e.id === element);
  const own = drawn?.kind === 'artwork' ? drawn.name : undefined;
  const name = useId();
  const pictures = useMotifPictures(question.offers);
  return (
    <fieldset>
      <legend className={css.legend}>{t('ask.questions.motif')}</legend>
      <div className={css.offers}>
        {question.offers.map((offer) => (
          <label key={offer} className={css.offer}>
            <input
              type="radio"
              name={name}
              className="sr-only"
              checked={offer === answer}
              onChange={() => act((d) => giveAnswer(d, question, offer))}
            />
            <span className={css.face}>
              <svg viewBox="-0.62 -0.62 1.24 1.24" className={css.sign} aria-hidden focusable="false">
                <path d={pictures[offer]?.path} transform="scale(1 -1)" />
              </svg>
              <span className={css.label}>{nameOf(offer)}</span>
            </span>
          </label>
        ))}
      </div>
      {question.standsIn === true && element !== undefined && (
        <div className={css.own}>
          <AddDrawing inPlaceOf={element} standsIn={own === undefined} />
          <p className={css.hint}>{own === undefined ? t('ask.drawingHint') : t('ask.drawingOwn', { name: own })}</p>
        </div>
      )}
    </fieldset>
  );
}

function nameOf(id: string): string {
  const motif = motifById(id);
  const name = motif === undefined ? id : motifName(motif);
  return name.charAt(0).toUpperCase() + name.slice(1);
}
