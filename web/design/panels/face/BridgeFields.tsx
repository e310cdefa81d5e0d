import { setBridges } from '../../../state/actions/set-fields.ts';
import { useAct, useCurrentPlate, useDesign, useUi } from '../../../page/page-context.ts';
import { Choice } from '../../../ui/fields/Choice.tsx';
import { lengthWords } from '../../../words/say/format-number.ts';
import { LengthField } from '../../../ui/fields/LengthField.tsx';
import { t } from '../../../words/t.ts';
import css from '../../../ui/fields.module.css';

const FIRST_WIDTH_MM = 3;

const MANNERS = ['hidden', 'upright', 'band'] as const;

/** How bridges run and how wide they are; never narrower than the stock allows. */
export function BridgeFields() {
  const { bridges } = useDesign();
  const { plate } = useCurrentPlate();
  const unit = useUi((s) => s.unit);
  const act = useAct();
  const least = plate?.rules.leastBridgeMm;
  const hint = least === undefined ? undefined : t('look.widthHint', { least: lengthWords(least, unit) });
  return (
    <>
      <p className={css.lead}>{t('look.bridgesSentence')}</p>
      <Choice
        legend={t('look.manner')}
        showLegend
        value={bridges.manner}
        options={MANNERS.map((value) => ({ value, label: t(`look.${value}`) }))}
        onChange={(manner) => act((d) => setBridges(d, { manner }))}
      />
      <Choice
        legend={t('look.widthLegend')}
        showLegend
        value={bridges.width === 'auto' ? 'auto' : 'own'}
        options={{ auto: t('look.auto'), own: t('look.ownWidth') }}
        onChange={(how) =>
          act((d) => setBridges(d, { width: how === 'auto' ? 'auto' : { mm: least ?? FIRST_WIDTH_MM } }))
        }
      />
      {bridges.width === 'auto' ? (
        hint !== undefined && <p className={css.note}>{hint}</p>
      ) : (
        <LengthField
          label={t('look.width')}
          mm={bridges.width.mm}
          leastMm={0.1}
          mostMm={100}
          hint={hint}
          onChange={(mm) => act((d) => setBridges(d, { width: { mm } }))}
        />
      )}
    </>
  );
}
