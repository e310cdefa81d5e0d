import { Ruler } from 'lucide-react';
import { useState } from 'react';
import { BARRELS } from '../../../../geometry/barrel/barrels.ts';
import { headRecess } from '../../../../geometry/barrel/recess.ts';
import { measureHead } from '../../../state/actions/plates/measure-head.ts';
import { pickBarrel } from '../../../state/actions/plates/pick-barrel.ts';
import { setHead } from '../../../state/actions/set-fields.ts';
import { useAct, useDesign, useUi } from '../../../page/page-context.ts';
import { Button } from '../../../ui/Button.tsx';
import { Choice } from '../../../ui/fields/Choice.tsx';
import { Fold } from '../../../ui/Fold.tsx';
import { lengthWords } from '../../../words/say/format-number.ts';
import { LengthField } from '../../../ui/fields/LengthField.tsx';
import { SelectField } from '../../../ui/fields/SelectField.tsx';
import { t } from '../../../words/t.ts';
import css from '../../../ui/fields.module.css';
import { HeadPicture } from './HeadPicture.tsx';
import { BarrelSource } from './HeadSource.tsx';
import { barrelName } from '../../../words/say/record-words.ts';

const FIRST_BARREL = 'american-53';
const FARTHEST_MM = 100_000;

interface Tape {
  readonly alongMm?: number;
  readonly acrossMm?: number;
}

/** The head, measured two ways, or taken from the table of barrels with the plain warning to measure first. */
export function HeadFields() {
  const { head } = useDesign();
  const unit = useUi((s) => s.unit);
  const act = useAct();
  const { source } = head;
  const [tape, setTape] = useState<Tape | undefined>();
  const read: Tape = source.kind === 'measured' ? source : (tape ?? {});
  const how = source.kind === 'measured' || tape !== undefined ? 'measured' : 'barrel';

  function change(to: 'measured' | 'barrel'): void {
    setTape(to === 'measured' && source.kind === 'barrel' ? {} : undefined);
    if (to === 'barrel' && source.kind === 'measured') act((d) => pickBarrel(d, FIRST_BARREL));
  }

  /** Figures from a table never pass for measured ones: the head is measured once both were typed. */
  function measure(part: Tape): void {
    const now = { ...read, ...part };
    const { alongMm, acrossMm } = now;
    if (alongMm === undefined || acrossMm === undefined) {
      setTape(now);
      return;
    }
    setTape(undefined);
    act((d) => measureHead(d, alongMm, acrossMm));
  }

  const tapeField = (part: 'alongMm' | 'acrossMm', label: string) => (
    <LengthField
      label={label}
      mm={read[part]}
      leastMm={-FARTHEST_MM}
      mostMm={FARTHEST_MM}
      onChange={(mm) => measure({ [part]: mm })}
    />
  );
  return (
    <div className={css.stack}>
      <Choice
        legend={t('size.how')}
        showLegend
        value={how}
        options={{ measured: t('size.measured'), barrel: t('size.barrel') }}
        onChange={change}
      />
      {source.kind === 'measured' || how === 'measured' ? (
        <>
          <p>{t('advice.head.tape')}</p>
          <HeadPicture />
          <div className={css.pair}>
            {tapeField('alongMm', t('size.along'))}
            {tapeField('acrossMm', t('size.across'))}
          </div>
          {source.kind === 'barrel' && <p className={css.note}>{t('advice.head.both')}</p>}
        </>
      ) : (
        <>
          <SelectField
            label={t('size.barrelLabel')}
            value={source.barrel}
            options={[
              ...(BARRELS.some((b) => b.id === source.barrel) ? [] : [{ value: source.barrel, label: source.barrel }]),
              ...BARRELS.map((b) => ({ value: b.id, label: barrelName(b) })),
            ]}
            onChange={(to) => act((d) => pickBarrel(d, to))}
          />
          <p className={css.warning}>{t('size.barrelWarning')}</p>
          <div>
            <Button kind="plain" onClick={() => change('measured')}>
              <Ruler size={16} aria-hidden /> {t('advice.head.now')}
            </Button>
          </div>
          <BarrelSource id={source.barrel} />
        </>
      )}
      <Fold title={t('size.moreHead')}>
        <div className={css.pair}>
          <LengthField
            label={t('size.clearance')}
            hint={t('size.clearanceHint')}
            mm={head.clearanceMm}
            leastMm={0}
            mostMm={200}
            onChange={(clearanceMm) => act((d) => setHead(d, { clearanceMm }))}
          />
          <LengthField
            label={t('size.crown')}
            hint={t('size.crownHint')}
            mm={head.crownMm}
            leastMm={-100}
            mostMm={200}
            onChange={(crownMm) => act((d) => setHead(d, { crownMm }))}
          />
        </div>
        <LengthField
          label={t('barrel.recess')}
          hint={
            head.recessMm === undefined
              ? t('barrel.recessHint', { depth: lengthWords(headRecess(head).mm, unit) })
              : t('barrel.recessMeasured')
          }
          mm={head.recessMm}
          leastMm={0}
          mostMm={200}
          onChange={(recessMm) => act((d) => setHead(d, { recessMm }))}
        />
      </Fold>
    </div>
  );
}
