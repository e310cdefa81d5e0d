import { useState } from 'react';
import type { Design } from '../../../geometry/design/schema.ts';
import { useUi } from '../../page/page-context.ts';
import { Choice } from '../../ui/fields/Choice.tsx';
import { lengthWords } from '../../words/say/format-number.ts';
import { PlatePicture } from '../../ui/PlatePicture.tsx';
import type { PlannedPlate } from '../../worker/plate-api.ts';
import { later } from '../../ui/later.tsx';
import { t } from '../../words/t.ts';
import css from './BigPicture.module.css';
import { ViewChoice } from '../controls/ViewChoice.tsx';
import { useProof } from '../state/proof-context.ts';

const BarrelPlace = later(async () => (await import('../../barrel/BarrelPlace.tsx')).BarrelPlace);

interface BigPictureProps {
  readonly design: Design;
  /** Undefined while they are worked out. */
  readonly plates: readonly PlannedPlate[] | undefined;
}

/** What is approved, large: its mark on the barrel, or the plate itself. */
export function BigPicture({ design, plates }: BigPictureProps) {
  const view = useProof((s) => s.view);
  const unit = useUi((s) => s.unit);
  const [chosen, setChosen] = useState<string | undefined>();
  const lettered = plates?.filter(({ plate }) => design.plates.some((p) => p.id === plate.plateId)) ?? [];
  const shown = (lettered.find(({ plate }) => plate.plateId === chosen) ?? lettered[0])?.plate;
  return (
    <div className={css.big}>
      <div className={css.bar}>
        {lettered.length > 1 && (
          <Choice
            legend={t('page.plates.legend')}
            quiet
            value={shown?.plateId}
            options={lettered.map(({ plate }) => ({ value: plate.plateId, label: plate.name }))}
            onChange={setChosen}
          />
        )}
        <ViewChoice quiet />
      </div>
      <div className={css.picture}>
        {shown === undefined ? (
          <p className={css.wait} role="status">
            {t('proof.working')}
          </p>
        ) : view === 'plate' ? (
          <div
            className={css.plate}
            role="img"
            aria-label={t('proof.view.plateLabel', { name: shown.name, across: lengthWords(shown.diameterMm, unit) })}
          >
            <PlatePicture plate={shown} />
          </div>
        ) : (
          <BarrelPlace
            waiting={<p className={css.wait}>{t('stage.loading')}</p>}
            design={design}
            plate={shown}
            plates={lettered.map(({ plate }) => plate)}
            state={design.stock.use === 'torch' ? 'char' : 'paint'}
            name={shown.name}
          />
        )}
      </div>
    </div>
  );
}
