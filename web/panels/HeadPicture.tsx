import { t } from '../words/t.ts';
import css from './HeadPicture.module.css';

const BOARDS = [-62, -38, -13, 13, 38, 62];

/** How and where to measure: inside the chime, along the boards and across them. */
export function HeadPicture() {
  return (
    <svg viewBox="-130 -88 260 176" className={css.picture} role="img" aria-label={t('size.picture')}>
      <circle r="84" className={css.chime} />
      <circle r="74" className={css.head} />
      {BOARDS.map((x) => {
        const y = Math.sqrt(74 * 74 - x * x);
        return <line key={x} x1={x} x2={x} y1={-y} y2={y} className={css.board} />;
      })}
      <g className={css.arrow}>
        <path d="M0-73V73M-5-64 0-73 5-64M-5 64 0 73 5 64" />
        <path d="M-73 0H73M-64-5-73 0-64 5M64-5 73 0 64 5" />
      </g>
      <path d="M79-28 96-46H104" className={css.leader} />
      <text x="105" y="-42" className={css.word}>
        {t('size.chime')}
      </text>
      <text x="6" y="-44" className={css.letter}>
        {t('size.alongShort')}
      </text>
      <text x="-66" y="-6" className={css.letter}>
        {t('size.acrossShort')}
      </text>
    </svg>
  );
}
