import { setBridges } from '../actions/set-bridges.ts';
import { useAct, useCurrentPlate, useDesign, usePage, useUi } from '../app/page-context.ts';
import { Choice } from '../ui/Choice.tsx';
import { lengthWords } from '../ui/format-number.ts';
import { LengthField } from '../ui/LengthField.tsx';
import { words } from '../words/en.ts';
import css from './fields.module.css';

const FIRST_WIDTH_MM = 3;

const MANNERS = ['hidden', 'upright', 'band'] as const;

/** How bridges run and how wide they are; never narrower than the stock allows. */
export function BridgeFields() {
  const { bridges } = useDesign();
  const { plate } = useCurrentPlate();
  const unit = useUi((s) => s.unit);
  const { design } = usePage();
  const act = useAct();
  const least = plate?.rules.leastBridgeMm;
  const hint = least === undefined ? undefined : words.look.widthHint(lengthWords(least, unit));
  return (
    <>
      <p className={css.lead}>{words.look.bridgesSentence}</p>
      <Choice
        legend={words.look.manner}
        showLegend
        value={bridges.manner}
        options={MANNERS.map((value) => ({ value, label: words.look[value] }))}
        onChange={(manner) => act((d) => setBridges(d, { manner }))}
      />
      <Choice
        legend={words.look.widthLegend}
        showLegend
        value={bridges.width === 'auto' ? 'auto' : 'own'}
        options={[
          { value: 'auto', label: words.look.auto },
          { value: 'own', label: words.look.ownWidth },
        ]}
        onChange={(how) =>
          act((d) => setBridges(d, { width: how === 'auto' ? 'auto' : { mm: least ?? FIRST_WIDTH_MM } }))
        }
      />
      {bridges.width === 'auto' ? (
        hint !== undefined && <p className={css.note}>{hint}</p>
      ) : (
        <LengthField
          label={words.look.width}
          mm={bridges.width.mm}
          unit={unit}
          leastMm={0.1}
          mostMm={100}
          hint={hint}
          onDone={() => design.getState().closeMerge()}
          onChange={(mm) => act((d) => setBridges(d, { width: { mm } }))}
        />
      )}
    </>
  );
}
