import { useRef } from 'react';
import { useUi } from '../../page/page-context.ts';
import { findingWords } from '../../words/say/finding-words.ts';
import { formatNumber } from '../../words/say/format-number.ts';
import { t } from '../../words/t.ts';
import { Check } from '../../ui/Check.tsx';
import { useCut, useCutParts, usePlannedSheet } from '../state/cut-context.ts';
import type { Shown } from '../state/cut-store.ts';
import fields from '../../ui/fields.module.css';
import text from '../../ui/text.module.css';
import css from './folds.module.css';
import { PressRow } from './PressRow.tsx';
import { SlugList } from './SlugList.tsx';

const LISTED = 6;

/** What is drawn of the plan, pieces that may tip up with what helps, and compromises. */
export function SequenceFold() {
  const { store } = useCutParts();
  const shown = useCut((s) => s.shown);
  const planned = usePlannedSheet();
  const unit = useUi((s) => s.unit);
  const home = useRef<HTMLDivElement>(null);
  const box = (name: keyof Shown) => (
    <Check
      key={name}
      label={t(`cut.order.show.${name}`)}
      checked={shown[name]}
      onChange={(on) => store.getState().set({ shown: { ...shown, [name]: on } })}
    />
  );
  const notes = planned?.plan.notes ?? [];
  const hottest = planned?.heat.passes.reduce((most, { heat }) => Math.max(most, heat), 0);
  // it stays while a plan gives way to the next, so that keys go on from where they were
  return (
    <div ref={home} tabIndex={-1} className={css.home} role="group" aria-label={t('cut.order.title')}>
      {!planned && <p className={text.note}>{t('cut.order.notYet')}</p>}
      {planned && (
        <>
          <div className={fields.pair}>{(['numbers', 'rapids', 'leads', 'heat'] as const).map(box)}</div>
          {shown.heat && (
            <p className={text.note}>{t('cut.order.hottest', { heat: formatNumber((hottest ?? 0) * 100, 0) })}</p>
          )}
          <SlugList planned={planned} home={home} />
        </>
      )}
      {notes.length > 0 && (
        <section className={css.list} aria-label={t('cut.order.notes')}>
          <h3 className={css.name}>
            <strong>{t('cut.order.notes')}</strong>
          </h3>
          <ul>
            {notes.slice(0, LISTED).map((note) => {
              const pass = `${note.plate}/${note.contour}`;
              return (
                <li key={`${pass} ${note.kind} ${note.at.x}`}>
                  <PressRow pass={pass}>
                    <span>
                      {note.plate}: {findingWords(note, unit)}
                    </span>
                  </PressRow>
                </li>
              );
            })}
          </ul>
          {notes.length > LISTED && (
            <p className={text.note}>{t('cut.order.more', { count: notes.length - LISTED })}</p>
          )}
        </section>
      )}
    </div>
  );
}
