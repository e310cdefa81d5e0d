import { Lock, LockOpen, RotateCcw, RotateCw } from 'lucide-react';
import { useUi } from '../../page/page-context.ts';
import { Button } from '../../ui/Button.tsx';
import { IconButton } from '../../ui/IconButton.tsx';
import { findingWords } from '../../words/say/finding-words.ts';
import { formatNumber, lengthWords } from '../../words/say/format-number.ts';
import { t } from '../../words/t.ts';
import { useCut, useCutParts } from '../state/cut-context.ts';
import text from '../../ui/text.module.css';
import css from './PlateTools.module.css';

const TURN_DEG = 15;

/** The chosen plate: where it lies, what is wrong with it, and what hands can do. */
export function PlateTools() {
  const { work } = useCutParts();
  const sheets = useCut((s) => s.history.present);
  const at = useCut((s) => s.sheetAt);
  const selected = useCut((s) => s.selected);
  const faults = useCut((s) => s.faults);
  const unit = useUi((s) => s.unit);
  const plate = sheets[at]?.plates.find(({ id }) => id === selected);
  const fault = faults.find((f) => f.sheet === at && (!plate || f.plates.includes(plate.id))) ?? faults[0];
  if (!plate && !fault) return <p className={css.hint}>{t('cut.hand.hint')}</p>;
  return (
    <section className={css.tools} aria-label={t('cut.hand.title')}>
      {plate && (
        <>
          <p className={css.name}>
            <strong>{plate.id}</strong>{' '}
            <span className={text.soft}>
              {t('cut.hand.facts', {
                across: lengthWords(plate.diameterMm, unit),
                x: lengthWords(plate.x, unit),
                y: lengthWords(plate.y, unit),
                turn: formatNumber(plate.turnDeg, 1),
              })}
            </span>
          </p>
          <div className={css.buttons}>
            <IconButton
              label={t('cut.hand.turnLeft', { by: TURN_DEG })}
              onClick={() => work.turn([plate.id], plate.turnDeg - TURN_DEG)}
              sign={RotateCcw}
            />
            <IconButton
              label={t('cut.hand.turnRight', { by: TURN_DEG })}
              onClick={() => work.turn([plate.id], plate.turnDeg + TURN_DEG)}
              sign={RotateCw}
            />
            <Button kind="plain" aria-pressed={plate.locked} onClick={() => work.lock(plate.id, !plate.locked)}>
              {plate.locked ? <Lock size={16} aria-hidden /> : <LockOpen size={16} aria-hidden />}
              {t(plate.locked ? 'cut.hand.unlock' : 'cut.hand.lock')}
            </Button>
            {sheets.length > 1 && (
              <label className={css.to}>
                <span className="sr-only">{t('cut.hand.toSheet')}</span>
                <select
                  value={at}
                  onChange={(e) => work.move(plate.id, Number(e.target.value), { x: plate.x, y: plate.y })}
                >
                  {sheets.map((sheet, i) => (
                    <option key={`${sheet.kind} ${sheet.number}`} value={i}>
                      {t('cut.sheet.of', { number: i + 1, count: sheets.length })}
                    </option>
                  ))}
                </select>
              </label>
            )}
          </div>
        </>
      )}
      {fault && (
        <p role="alert" className={css.fault}>
          {findingWords(fault, unit)}
        </p>
      )}
    </section>
  );
}
