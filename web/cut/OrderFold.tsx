import type { Slug } from '../../geometry/cutplan/sheet-plan.ts';
import type { SlugMend } from '../../geometry/cutplan/slug-mends.ts';
import { TIP_LIMIT } from '../../geometry/cutplan/slugs.ts';
import { useUi } from '../app/page-context.ts';
import { Button } from '../ui/Button.tsx';
import { findingWords } from '../ui/finding-words.ts';
import { formatNumber } from '../ui/format-number.ts';
import { t } from '../words/t.ts';
import { Check } from './Check.tsx';
import { useCut, useCutParts, usePlannedSheet } from './cut-context.ts';
import type { Shown } from './cut-store.ts';
import css from './folds.module.css';
import { pieceWords } from './piece-words.ts';

const LISTED = 6;

/** What is drawn of the plan, pieces that may stand with what helps, and what could not be done as wished. */
export function OrderFold() {
  const { store, work } = useCutParts();
  const shown = useCut((s) => s.shown);
  const tabs = useCut((s) => s.wishes.tabs);
  const lit = useCut((s) => s.lit);
  const items = useCut((s) => s.items);
  const planned = usePlannedSheet();
  const unit = useUi((s) => s.unit);
  const box = (name: keyof Shown) => (
    <Check
      key={name}
      label={t(`cut.order.show.${name}`)}
      checked={shown[name]}
      onChange={(on) => store.getState().set({ shown: { ...shown, [name]: on } })}
    />
  );
  if (!planned) return <p className={css.note}>{t('cut.order.notYet')}</p>;
  const { slugs, notes } = planned.plan;
  const risky = slugs.filter((slug) => slug.tips > TIP_LIMIT && !slug.isTabbed);
  const worst = byKind(risky);
  const hottest = planned.heat.passes.reduce((most, p) => (p.heat > most.heat ? p : most), { pass: '', heat: 0 });
  return (
    <>
      <div className={css.pair}>{(['numbers', 'rapids', 'leads', 'heat'] as const).map(box)}</div>
      {shown.heat && (
        <p className={css.note}>{t('cut.order.hottest', { heat: formatNumber(hottest.heat * 100, 0) })}</p>
      )}
      <section className={css.list} aria-label={t('cut.order.slugs')}>
        <h3 className={css.name}>
          <strong>{t('cut.order.slugs')}</strong>
        </h3>
        <p className={css.note}>
          {risky.length > 0 ? t('cut.order.risky', { count: risky.length }) : t('cut.order.noneRisky')}
        </p>
        <ul>
          {worst.slice(0, LISTED).map(({ slug, count }) => (
            <li key={slug.pass}>
              <button
                type="button"
                className={css.press}
                aria-pressed={lit === slug.pass}
                onClick={() => store.getState().set({ lit: lit === slug.pass ? undefined : slug.pass })}
              >
                <span>
                  {slug.plate}: {pieceWords(items, slug.plate, slug.pass)}
                  {count > 1 && <span className={css.sub}>{t('cut.order.alike', { count: count - 1 })}</span>}
                </span>
                <span>{t('cut.order.tips', { share: formatNumber(slug.tips * 100, 0) })}</span>
              </button>
            </li>
          ))}
        </ul>
        <Check label={t('cut.order.tabs')} checked={tabs} onChange={(on) => work.wish({ tabs: on })} />
        <div className={css.buttons}>
          {planned.mends.slice(0, LISTED).map((mend) => (
            <MendButton key={`${mend.plate} ${mend.kind}`} mend={mend} />
          ))}
        </div>
      </section>
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
                  <button
                    type="button"
                    className={css.press}
                    aria-pressed={lit === pass}
                    onClick={() => store.getState().set({ lit: lit === pass ? undefined : pass })}
                  >
                    <span>
                      {note.plate}: {findingWords(note, unit)}
                    </span>
                  </button>
                </li>
              );
            })}
          </ul>
          {notes.length > LISTED && <p className={css.note}>{t('cut.order.more', { count: notes.length - LISTED })}</p>}
        </section>
      )}
    </>
  );
}

/** The same piece of equal plates once, with how many there are. */
function byKind(slugs: readonly Slug[]): readonly { readonly slug: Slug; readonly count: number }[] {
  const kinds = new Map<string, { slug: Slug; count: number }>();
  for (const slug of slugs) {
    const key = `${slug.plate.split('#')[0] ?? ''}${slug.pass.slice(slug.plate.length)}`;
    const known = kinds.get(key);
    if (known) known.count++;
    else kinds.set(key, { slug, count: 1 });
  }
  return [...kinds.values()];
}

/** One thing that helps, with what it would do. */
function MendButton({ mend }: { readonly mend: SlugMend }) {
  const { work } = useCutParts();
  // which words come last is not yet anybody's to choose
  if (mend.kind !== 'turn') return null;
  return (
    <Button
      kind="plain"
      onClick={() => {
        work.turn(mend.plate, mend.turnDeg);
        void work.plan();
      }}
    >
      {t('cut.order.turn', {
        plate: mend.plate,
        turn: formatNumber(mend.turnDeg, 0),
        before: formatNumber(mend.before, 1),
        after: formatNumber(mend.after, 1),
      })}
    </Button>
  );
}
