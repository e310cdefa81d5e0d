import { measuredLitres } from '../../../../geometry/barrel/inside.ts';
import { sideMeasures } from '../../../../geometry/barrel/side-measures.ts';
import { LITRES_PER_GALLON } from '../../../../geometry/units.ts';
import { setSide, setSurface } from '../../../state/actions/plates/set-surface.ts';
import { useAct, useDesign, useUi } from '../../../page/page-context.ts';
import { Choice } from '../../../ui/fields/Choice.tsx';
import { formatNumber, lengthWords } from '../../../words/say/format-number.ts';
import { LengthField } from '../../../ui/fields/LengthField.tsx';
import { t } from '../../../words/t.ts';
import css from '../../../ui/fields.module.css';

/** Whether the mark goes on the head of the barrel or on its side. */
export function PlaceChoice() {
  const { surface } = useDesign();
  const act = useAct();
  return (
    <Choice
      legend={t('barrel.place.legend')}
      showLegend
      value={surface === 'head' ? 'head' : 'side'}
      options={{ head: t('barrel.place.head'), side: t('barrel.place.side') }}
      onChange={(kind) => act((d) => setSurface(d, kind))}
    />
  );
}

type Diameter = 'bilgeMm' | 'endMm';

/** The side of the barrel, measured with a string: round its belly, round an end, and along it. */
export function SideFields() {
  const { head, surface } = useDesign();
  const unit = useUi((s) => s.unit);
  const act = useAct();
  if (surface === 'head') return null;
  const reckoned = sideMeasures(head, surface);
  const litres = measuredLitres(head, surface);

  function hint(part: Diameter | 'lengthMm'): string | undefined {
    const mm = surface === 'head' ? undefined : surface[part];
    if (mm !== undefined)
      return part === 'lengthMm' ? undefined : t('barrel.side.across', { across: lengthWords(mm, unit) });
    if (reckoned === undefined) return part === 'endMm' ? t('barrel.side.endHint') : undefined;
    const size = lengthWords(part === 'lengthMm' ? reckoned.lengthMm : reckoned[part] * Math.PI, unit);
    return t('barrel.side.reckoned', { size });
  }

  const string = (part: Diameter, label: string) => (
    <LengthField
      label={label}
      hint={hint(part) ?? t('barrel.side.bilgeHint')}
      mm={surface[part] === undefined ? undefined : surface[part] * Math.PI}
      leastMm={1}
      mostMm={100_000}
      onChange={(roundMm) => act((d) => setSide(d, { [part]: roundMm / Math.PI }))}
    />
  );
  return (
    <div className={css.stack}>
      <p>{t('barrel.side.intro')}</p>
      <div className={css.pair}>
        {string('bilgeMm', t('barrel.side.bilge'))}
        {string('endMm', t('barrel.side.end'))}
      </div>
      <LengthField
        label={t('barrel.side.length')}
        hint={hint('lengthMm')}
        mm={surface.lengthMm}
        leastMm={1}
        mostMm={100_000}
        onChange={(lengthMm) => act((d) => setSide(d, { lengthMm }))}
      />
      <Choice
        legend={t('barrel.side.lines')}
        showLegend
        value={surface.lines}
        options={{ 'along-hoops': t('barrel.side.alongHoops'), 'up-staves': t('barrel.side.upStaves') }}
        onChange={(lines) => act((d) => setSide(d, { lines }))}
      />
      <div className={css.stack}>
        <Choice
          legend={t('barrel.side.spread')}
          value={surface.spread ? 'spread' : 'even'}
          options={{ spread: t('barrel.side.spread'), even: t('barrel.side.even') }}
          onChange={(how) => act((d) => setSide(d, { spread: how === 'spread' }))}
        />
        <p className={css.note}>{t('barrel.side.spreadHint')}</p>
      </div>
      {reckoned !== undefined && (
        <p className={css.note}>{t('barrel.side.rolled', { radius: lengthWords(reckoned.bilgeMm / 2, unit) })}</p>
      )}
      {litres !== undefined && (
        <p className={css.note}>
          {t('barrel.side.holds', {
            litres: formatNumber(litres, 0),
            gallons: formatNumber(litres / LITRES_PER_GALLON, 0),
          })}
        </p>
      )}
    </div>
  );
}
