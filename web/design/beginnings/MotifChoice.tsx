import { createCache } from '../../../geometry/cache.ts';
import { useId } from 'react';
import type { Outline } from '../../../geometry/shapes.ts';
import { motifById } from '../../../geometry/motifs/catalogue.ts';
import { drawMotif } from '../../../geometry/motifs/draw-motif.ts';
import { useAct, useDesign } from '../../page/page-context.ts';
import { giveAnswer } from './answer.ts';
import type { MotifQuestion } from './question.ts';
import { motifName } from '../../words/say/record-words.ts';
import { t } from '../../words/t.ts';
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
                <path d={signPath(offer)} />
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

const PATHS = createCache<string>(200);

/** Its outline as SVG path data, y down. */
function signPath(id: string): string {
  return PATHS.getOrMake(id, () => {
    const motif = motifById(id);
    return motif === undefined ? '' : outlinePath(drawMotif(motif, {}));
  });
}

function outlinePath(outline: Outline): string {
  const at = (x: number, y: number): string => `${x.toFixed(4)} ${(-y).toFixed(4)} `;
  return outline
    .map((c) => {
      switch (c.type) {
        case 'Z':
          return 'Z';
        case 'Q':
          return `Q${at(c.x1, c.y1)}${at(c.x, c.y)}`;
        case 'C':
          return `C${at(c.x1, c.y1)}${at(c.x2, c.y2)}${at(c.x, c.y)}`;
        default:
          return `${c.type}${at(c.x, c.y)}`;
      }
    })
    .join('');
}
