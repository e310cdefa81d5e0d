import { Plus, X } from 'lucide-react';
import { useState } from 'react';
import { sheetKindsFor } from '../../../geometry/cutplan/cost/settings-for.ts';
import { usePage, useUi } from '../../page/page-context.ts';
import { Button } from '../../ui/Button.tsx';
import { IconButton } from '../../ui/IconButton.tsx';
import { formatNumber, lengthWords } from '../../words/say/format-number.ts';
import { LengthField } from '../../ui/fields/LengthField.tsx';
import { t } from '../../words/t.ts';
import { Check } from '../../ui/Check.tsx';
import { useCut, useCutParts } from '../state/cut-context.ts';
import fields from '../../ui/fields.module.css';
import text from '../../ui/text.module.css';
import css from './folds.module.css';
import { gapsOf, kindsOf, leastGapsOf, stockOf } from '../state/plates-wanted.ts';
import { sizeWords } from '../state/sheet-words.ts';

/** What is on the rack, remnants typed in, what stays free; how full the sheets are and what is left over. */
export function SheetsFold() {
  const { work } = useCutParts();
  const { book } = usePage();
  const unit = useUi((s) => s.unit);
  const state = useCut((s) => s);
  const stock = stockOf(state);
  const gaps = gapsOf(state, book);
  const least = leastGapsOf(state, book);
  const all = stock ? sheetKindsFor(book, stock) : [];
  const chosen = new Set(kindsOf(state, book).map(({ id }) => id));
  const { rest, remnants } = state;
  const sheets = state.history.present;
  return (
    <>
      <fieldset>
        <legend className={text.note}>{t('cut.sheets.kinds')}</legend>
        {all.map((kind) => (
          <Check
            key={kind.id}
            label={sizeWords(kind.widthMm, kind.heightMm, unit)}
            checked={chosen.has(kind.id)}
            onChange={(on) =>
              work.choose({
                kindIds: all.flatMap(({ id }) => ((id === kind.id ? on : chosen.has(id)) ? [id] : [])),
              })
            }
          />
        ))}
        {remnants.map((kind, i) => (
          <div key={kind.id} className={css.head}>
            <span>
              {t('cut.sheets.remnant', { size: sizeWords(kind.widthMm, kind.heightMm, unit) })}
              {kind.gone?.map(({ x, y, radiusMm }) => (
                <span key={`${x} ${y}`} className={text.sub}>
                  {t('cut.sheets.hole', {
                    across: lengthWords(2 * radiusMm, unit),
                    x: lengthWords(x, unit),
                    y: lengthWords(y, unit),
                  })}
                </span>
              ))}
            </span>
            <IconButton
              label={t('cut.sheets.dropRemnant', { number: i + 1 })}
              onClick={() => work.choose({ remnants: remnants.filter((r) => r !== kind) })}
              sign={X}
            />
          </div>
        ))}
      </fieldset>
      <RemnantForm />
      <div className={fields.pair}>
        <LengthField
          label={t('cut.sheets.between')}
          mm={gaps.betweenMm}
          leastMm={least.betweenMm}
          hint={t('cut.sheets.leastGap', { least: lengthWords(least.betweenMm, unit, 2) })}
          mostMm={200}
          onChange={(betweenMm) => work.choose({ ownGaps: { ...state.ownGaps, betweenMm } })}
        />
        <LengthField
          label={t('cut.sheets.edge')}
          mm={gaps.edgeMm}
          leastMm={least.edgeMm}
          mostMm={200}
          onChange={(edgeMm) => work.choose({ ownGaps: { ...state.ownGaps, edgeMm } })}
        />
      </div>
      {sheets.length > 0 && (
        <p className={text.note}>
          {t('cut.sheets.use', {
            count: sheets.length,
            used: formatNumber((sheets.reduce((sum, s) => sum + s.usedShare, 0) / sheets.length) * 100, 0),
          })}{' '}
          {rest &&
            t('cut.sheets.rest', {
              size: sizeWords(rest.kind.widthMm, rest.kind.heightMm, unit, unit === 'mm' ? 0 : 1),
              number: rest.sheet + 1,
            })}
        </p>
      )}
      <div className={css.buttons}>
        <Button kind="plain" disabled={sheets.length === 0} onClick={work.placeAnew}>
          {t('cut.sheets.anew')}
        </Button>
      </div>
    </>
  );
}

/** A piece left over from earlier work, with what was cut from it already. */
function RemnantForm() {
  const { work, store } = useCutParts();
  const [open, setOpen] = useState(false);
  const [size, setSize] = useState({ widthMm: 600, heightMm: 600 });
  const [hole, setHole] = useState({ x: 0, y: 0, across: 0 });
  if (!open) {
    return (
      <div className={css.buttons}>
        <Button kind="quiet" onClick={() => setOpen(true)}>
          <Plus size={16} aria-hidden /> {t('cut.sheets.addRemnant')}
        </Button>
      </div>
    );
  }
  const add = (): void => {
    const { remnants } = store.getState();
    const gone = hole.across > 0 ? { gone: [{ x: hole.x, y: hole.y, radiusMm: hole.across / 2 }] } : {};
    const numbers = remnants.map(({ id }) => Number(id.replace('remnant-', '')));
    const id = `remnant-${Math.max(0, ...numbers) + 1}`;
    work.choose({ remnants: [...remnants, { id, ...size, count: 1, remnant: true, ...gone }] });
    setOpen(false);
  };
  const field = (label: string, mm: number, onChange: (mm: number) => void, leastMm = 0) => (
    <LengthField label={label} mm={mm} leastMm={leastMm} mostMm={20_000} onChange={onChange} />
  );
  return (
    <fieldset className={css.list}>
      <legend className={text.note}>{t('cut.sheets.addRemnant')}</legend>
      <div className={fields.pair}>
        {field(t('cut.sheets.width'), size.widthMm, (widthMm) => setSize({ ...size, widthMm }), 50)}
        {field(t('cut.sheets.height'), size.heightMm, (heightMm) => setSize({ ...size, heightMm }), 50)}
      </div>
      {field(t('cut.sheets.holeAcross'), hole.across, (across) => setHole({ ...hole, across }))}
      {hole.across > 0 && (
        <div className={fields.pair}>
          {field(t('cut.sheets.holeX'), hole.x, (x) => setHole({ ...hole, x }))}
          {field(t('cut.sheets.holeY'), hole.y, (y) => setHole({ ...hole, y }))}
        </div>
      )}
      <div className={css.buttons}>
        <Button kind="plain" onClick={add}>
          {t('cut.sheets.take')}
        </Button>
        <Button kind="quiet" onClick={() => setOpen(false)}>
          {t('cut.sheets.cancel')}
        </Button>
      </div>
    </fieldset>
  );
}
