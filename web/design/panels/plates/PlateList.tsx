import { Minus, Plus, Trash2 } from 'lucide-react';
import { useMemo } from 'react';
import { plateDiameterMm } from '../../../../geometry/barrel/blank.ts';
import type { Design, PlateSpec } from '../../../../geometry/design/schema.ts';
import { addPlate, MOST_PLATES } from '../../../state/actions/plates/add-plate.ts';
import { removePlate } from '../../../state/actions/plates/remove-plate.ts';
import { setPlate } from '../../../state/actions/plates/set-plate.ts';
import { useQuote } from '../../../handover/price/use-quote.ts';
import { moneyWords } from '../../../words/say/money-words.ts';
import { useAct, useDesign, useUi } from '../../../page/page-context.ts';
import { Button } from '../../../ui/Button.tsx';
import { IconButton } from '../../../ui/IconButton.tsx';
import { Fold } from '../../../ui/Fold.tsx';
import { formatNumber, lengthWords } from '../../../words/say/format-number.ts';
import { NumberField } from '../../../ui/fields/NumberField.tsx';
import { t } from '../../../words/t.ts';
import layout from '../../../ui/layout.module.css';
import css from './PlateList.module.css';
import { MaskRing } from './MaskRing.tsx';
import { PlateSize } from './PlateSize.tsx';

const HALF = 0.5;
const MOST_PIECES = 100_000;

/** The plates of the order in words: how large, how many; name and other sizes a fold away. */
export function PlateList() {
  const design = useDesign();
  const act = useAct();
  const { plates } = design;
  const room = plates.length < MOST_PLATES;
  const hasLarge = plates.some((p) => p.diameter === 'fit');
  const hasHalf = plates.some(
    (p) => typeof p.diameter === 'object' && 'share' in p.diameter && p.diameter.share === HALF,
  );
  const { diameterMm } = plateDiameterMm(design, { id: '', name: '', diameter: 'fit', quantity: 1 });
  const add = (name: string, diameter: PlateSpec['diameter']): void => act((d) => addPlate(d, name, diameter));
  return (
    <>
      <ol className={css.list}>
        {plates.map((plate) => (
          <PlateRow key={plate.id} plate={plate} only={plates.length === 1} />
        ))}
      </ol>
      {room && (
        <div className={layout.buttons} role="group" aria-label={t('size.addPlate')}>
          {!hasLarge && (
            <Button kind="plain" onClick={() => add(t('page.plates.large'), 'fit')}>
              <Plus size={16} aria-hidden /> {t('advice.plates.addLarge')}
            </Button>
          )}
          {!hasHalf && <AddHalf onAdd={() => add(t('page.plates.half'), { share: HALF })} />}
          <Button
            kind="plain"
            onClick={() => add(t('size.newPlate', { n: plates.length + 1 }), { mm: Math.round(diameterMm * 0.75) })}
          >
            <Plus size={16} aria-hidden /> {t('advice.plates.addOwn')}
          </Button>
        </div>
      )}
    </>
  );
}

/** What one more plate at half the size adds to the price, as soon as that is known. */
function AddHalf({ onAdd }: { readonly onAdd: () => void }) {
  const design = useDesign();
  const both = useMemo(() => addPlate(design, t('page.plates.half'), { share: HALF }).design, [design]);
  const { quoted: now } = useQuote();
  const { quoted: then } = useQuote(both);
  const more =
    now.state === 'ready' && then.state === 'ready'
      ? moneyWords(then.quote.totalMinor - now.quote.totalMinor, now.quote.currency)
      : undefined;
  return (
    <Button kind="plain" onClick={onAdd}>
      <Plus size={16} aria-hidden /> {t('advice.plates.addHalf')}
      {more !== undefined && ` (+ ${more})`}
    </Button>
  );
}

function PlateRow({ plate, only }: { readonly plate: PlateSpec; readonly only: boolean }) {
  const current = useDesign();
  const unit = useUi((s) => s.unit);
  const act = useAct();
  const { diameterMm } = plateDiameterMm(current, plate);
  const size = lengthWords(diameterMm, unit);
  const { diameter, quantity, name } = plate;
  // none of it is wanted any more
  const pieces = (n: number): void =>
    act((d) => (n < 1 ? removePlate(d, plate.id) : setPlate(d, plate.id, { quantity: n })));
  return (
    <li className={css.row}>
      <div className={css.head}>
        <div className={css.what}>
          <p className={css.name}>{name}</p>
          <p className={css.size}>
            {plate.masks !== undefined
              ? ringWords(current, plate.masks, size)
              : diameter === 'fit'
                ? t('advice.plates.fit', { size })
                : 'mm' in diameter
                  ? t('advice.plates.own', { size })
                  : diameter.share === HALF
                    ? t('advice.plates.half', { size })
                    : t('advice.plates.share', { percent: formatNumber(diameter.share * 100, 1), size })}
          </p>
        </div>
        <div className={css.pieces}>
          <IconButton
            label={t('advice.plates.fewer', { name })}
            sign={Minus}
            size={16}
            disabled={quantity <= 1 && only}
            onClick={() => pieces(quantity - 1)}
          />
          <NumberField
            label={t('size.quantity')}
            value={quantity}
            least={only ? 1 : 0}
            most={MOST_PIECES}
            whole
            onChange={pieces}
          />
          <IconButton
            label={t('advice.plates.another', { name })}
            sign={Plus}
            size={16}
            disabled={quantity >= MOST_PIECES}
            onClick={() => pieces(quantity + 1)}
          />
        </div>
      </div>
      <Fold title={t('advice.plates.more', { name })}>
        <PlateSize plate={plate} diameterMm={diameterMm} />
        <MaskRing plate={plate} diameterMm={diameterMm} />
        {!only && (
          <div>
            <Button kind="plain" onClick={() => act((d) => removePlate(d, plate.id))}>
              <Trash2 size={16} aria-hidden /> {t('size.removePlate', { name })}
            </Button>
          </div>
        )}
      </Fold>
    </li>
  );
}

function ringWords({ plates }: Design, masks: string, size: string): string {
  const masked = plates.find((p) => p.id === masks);
  return masked ? t('barrel.mask.size', { name: masked.name, size }) : t('barrel.mask.gone');
}
