import { type RefObject, useState } from 'react';
import { countMovesSaved } from '../../../geometry/cutplan/sheet/slug-remedies.ts';
import { TIP_LIMIT } from '../../../geometry/cutplan/sheet/slugs.ts';
import { useUi } from '../../page/page-context.ts';
import { Button } from '../../ui/Button.tsx';
import { formatNumber, lengthWords } from '../../words/say/format-number.ts';
import { t } from '../../words/t.ts';
import type { PlannedSheet } from '../../worker/cut-api.ts';
import { Check } from '../../ui/Check.tsx';
import { useCut, useCutParts } from '../state/cut-context.ts';
import text from '../../ui/text.module.css';
import css from './folds.module.css';
import { pieceWords } from './piece-words.ts';
import { PressRow } from './PressRow.tsx';
import { contourOf, type SlugKind, slugKinds, withIds } from './slug-kinds.ts';

const LISTED = 6;

interface SlugListProps {
  readonly planned: PlannedSheet;
  /** Takes the focus when what was pressed goes away. */
  readonly home: RefObject<HTMLElement | null>;
}

/** Pieces that may tip and stand: how many, the worst, and for each what helps. */
export function SlugList({ planned, home }: SlugListProps) {
  const { work } = useCutParts();
  const wishes = useCut((s) => s.wishes);
  const lit = useCut((s) => s.lit);
  const items = useCut((s) => s.items);
  const sheets = useCut((s) => s.planned?.job.sheets ?? s.history.present);
  const sheetAt = useCut((s) => s.sheetAt);
  const unit = useUi((s) => s.unit);
  const [listed, setListed] = useState(LISTED);
  const risky = planned.plan.slugs.filter((slug) => slug.tips > TIP_LIMIT && !slug.isTabbed);
  const kinds = slugKinds(planned.plan, sheetAt, sheets, wishes.held);
  return (
    <section className={css.list} aria-label={t('cut.order.slugs')}>
      <h3 className={css.name}>
        <strong>{t('cut.order.slugs')}</strong>
      </h3>
      <p className={text.note} role="status" data-testid="risky">
        {risky.length > 0 ? t('cut.order.risky', { count: risky.length }) : t('cut.order.noneRisky')}
      </p>
      <ul>
        {kinds.slice(0, listed).map((kind) => {
          const { slug, isHeld, plates } = kind;
          const isOpen = lit === slug.pass;
          return (
            <li key={slug.pass}>
              <PressRow pass={slug.pass} opens>
                <span>
                  {slug.plate}: {pieceWords(items, slug.plate, slug.pass)}
                  {plates.length > 1 && (
                    <span className={text.sub}>{t('cut.order.alike', { count: plates.length - 1 })}</span>
                  )}
                </span>
                <span className={css.number}>
                  {isHeld ? t('cut.order.held') : t('cut.order.tips', { share: formatNumber(slug.tips * 100, 0) })}
                  {!isHeld && slug.riseMm > 0 && (
                    <span className={text.sub}>
                      {t('cut.order.rise', { rise: lengthWords(slug.riseMm, unit, unit === 'mm' ? 0 : 1) })}
                    </span>
                  )}
                </span>
              </PressRow>
              {isOpen && <Mends kind={kind} planned={planned} home={home} />}
            </li>
          );
        })}
      </ul>
      {kinds.length > listed && (
        <div className={css.buttons}>
          <Button kind="quiet" onClick={() => setListed(listed + 2 * LISTED)}>
            {t('cut.order.showMore', { count: kinds.length - listed })}
          </Button>
        </div>
      )}
      <Check label={t('cut.order.tabs')} checked={wishes.tabs} onChange={(tabs) => work.wish({ tabs })} />
      {(wishes.held.length > 0 || wishes.last.length > 0) && (
        <div className={css.head}>
          <span className={text.note}>
            {t('cut.order.heldCount', { count: wishes.held.length })}{' '}
            {wishes.last.length > 0 && t('cut.order.lastCount', { count: wishes.last.length })}
          </span>
          <Button
            kind="quiet"
            onClick={() => {
              home.current?.focus();
              work.wish({ held: [], last: [] });
            }}
          >
            {t('cut.order.letGo')}
          </Button>
        </div>
      )}
    </section>
  );
}

/** What helps against one piece, on every plate that is alike: tabs, its word last, the plate turned. */
function Mends({ kind, planned, home }: SlugListProps & { readonly kind: SlugKind }) {
  const { work } = useCutParts();
  const wishes = useCut((s) => s.wishes);
  const { slug, plate, plates, word, isHeld } = kind;
  const isRim = contourOf(slug) === '/rim';
  const turn = planned.mends.find((mend) => mend.kind === 'turn' && mend.plate === plate.id);
  const risky = new Set(planned.plan.slugs.flatMap((s) => (s.tips > TIP_LIMIT && !s.isTabbed ? [s.pass] : [])));
  const isLast = wishes.last.includes(word);
  const saved = countMovesSaved(planned.plan, plate.id, new Set([word]), risky);
  const onAll = (part: string): readonly string[] => plates.map((id) => id + part);
  return (
    <div className={css.mends}>
      {!isRim && (
        <Check
          label={t('cut.order.tabsHere')}
          checked={isHeld}
          onChange={(on) => work.wish({ held: withIds(wishes.held, onAll(contourOf(slug)), on) })}
        />
      )}
      {!isRim && (isLast || saved > 0) && (
        <Check
          label={isLast ? t('cut.order.isLast') : t('cut.order.lastHere', { count: saved })}
          checked={isLast}
          onChange={(on) => work.wish({ last: withIds(wishes.last, onAll(word.slice(plate.id.length)), on) })}
        />
      )}
      {turn?.kind === 'turn' && (
        <Button
          kind="plain"
          onClick={() => {
            home.current?.focus();
            work.turn(plates, turn.turnDeg);
            void work.plan();
          }}
        >
          {t(plates.length > 1 ? 'cut.order.turnAll' : 'cut.order.turn', {
            plate: turn.plate,
            count: plates.length,
            turn: formatNumber(turn.turnDeg, 0),
            before: formatNumber(turn.before, 1),
            after: formatNumber(turn.after, 1),
          })}
        </Button>
      )}
      {isRim && !turn && <p className={text.note}>{t('cut.order.noMend')}</p>}
    </div>
  );
}
