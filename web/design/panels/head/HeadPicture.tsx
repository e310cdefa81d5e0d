import { clockPoint } from '../../../../geometry/measure/clock.ts';
import { t } from '../../../words/t.ts';
import css from './HeadPicture.module.css';

const BOARDS = [-54, -33, -11, 11, 33, 54];
const HEAD = 70;
const STAVES = 30;
/** Marks on a tape, so many units apart. */
const MARKS = Array.from({ length: 13 }, (_, i) => -60 + i * 10);

/** How and where to measure, seen from the front and cut through: inside the chime, along the boards and across. */
export function HeadPicture() {
  return (
    <svg viewBox="0 0 340 196" className={css.picture} role="img" aria-label={t('advice.head.picture')}>
      <g transform="translate(96 92)">
        <circle r="84" className={css.chime} />
        {Array.from({ length: STAVES }, (_, i) => {
          const [from, to] = [clockPoint(HEAD, (i * 360) / STAVES), clockPoint(84, (i * 360) / STAVES)];
          return <line key={i} x1={from.x} y1={from.y} x2={to.x} y2={to.y} className={css.joint} />;
        })}
        <circle r={HEAD} className={css.head} />
        {BOARDS.map((x) => {
          const y = Math.sqrt(HEAD * HEAD - x * x);
          return <line key={x} x1={x} x2={x} y1={-y} y2={y} className={css.board} />;
        })}
        <Tape />
        <g transform="rotate(90)">
          <Tape />
        </g>
        <text x="10" y="-40" className={css.letter}>
          {t('size.alongShort')}
        </text>
        <text x="-62" y="-11" className={css.letter}>
          {t('size.acrossShort')}
        </text>
      </g>
      <g transform="translate(216 16)">
        {/* the stave from the side, its end bevelled: the chime */}
        <path d="M0 14 14 0H124V22H14Z" className={css.chime} />
        <path d="M0 138 14 152H124V130H14Z" className={css.chime} />
        <path d="M48 16H64V136H48Z" className={css.section} />
        <g transform="translate(40 76)">
          <Tape half={54} />
        </g>
        <path d="M34 22H12M34 130H12" className={css.leader} />
        <text x="70" y="80" className={css.word}>
          {t('advice.head.board')}
        </text>
        <text x="70" y="15" className={css.word}>
          {t('size.chime')}
        </text>
        <text x="-18" y="42" className={css.word}>
          {t('advice.head.fromHere')}
        </text>
        <text x="-18" y="118" className={css.word}>
          {t('advice.head.toHere')}
        </text>
      </g>
      <text x="96" y="192" textAnchor="middle" className={css.caption}>
        {t('advice.head.front')}
      </text>
      <text x="272" y="192" textAnchor="middle" className={css.caption}>
        {t('advice.head.side')}
      </text>
    </svg>
  );
}

/** A tape from edge to edge, upright, with its hook at the top. */
function Tape({ half = HEAD }: { readonly half?: number }) {
  return (
    <g>
      <rect x="-4" y={-half} width="8" height={2 * half} className={css.tape} />
      {MARKS.filter((y) => Math.abs(y) < half - 4).map((y) => (
        <line key={y} x1="-4" x2="0" y1={y} y2={y} className={css.mark} />
      ))}
      <path d={`M-7 ${-half}H7M-7 ${half}H7`} className={css.end} />
    </g>
  );
}
