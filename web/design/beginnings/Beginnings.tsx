import { READY_MADE } from './beginnings.ts';
import { useBegin } from './use-begin.ts';
import { t } from '../../words/t.ts';
import css from './Beginnings.module.css';
import { OtherWays } from './OtherWays.tsx';
import { BeginningPicture } from './BeginningPicture.tsx';

/** Where everything begins: ready-made heads as pictures of their true plates, and the other ways in. */
export function Beginnings() {
  const begin = useBegin();
  return (
    <>
      <p className={css.lead}>{t('begin.lead')}</p>
      <ul className={css.cards} aria-label={t('begin.ready')}>
        {READY_MADE.map((beginning) => (
          <li key={beginning.id}>
            <button type="button" className={css.card} onClick={() => begin.readyMade(beginning)}>
              <BeginningPicture of={beginning.id} />
              <span className={css.name}>{t(`begin.kinds.${beginning.id}`)}</span>
            </button>
          </li>
        ))}
      </ul>
      <OtherWays />
    </>
  );
}
