import { Download, FileText, Shapes } from 'lucide-react';
import { useState } from 'react';
import { saveFile } from '../../page/save-file.ts';
import { useFilesHeld } from '../../page/use-files-held.ts';
import { Button } from '../../ui/Button.tsx';
import { Choice } from '../../ui/fields/Choice.tsx';
import { refusalWords } from '../../words/say/finding-words.ts';
import { t } from '../../words/t.ts';
import type { SizeWish, WantedJobFile } from '../../worker/cut-api.ts';
import { Check } from '../../ui/Check.tsx';
import { useCut, useCutParts } from '../state/cut-context.ts';
import text from '../../ui/text.module.css';
import css from './folds.module.css';

/** The files of the plan: this sheet, one plate of it, or the whole order. */
export function FilesFold() {
  const { work } = useCutParts();
  const planned = useCut((s) => s.planned);
  const sheetAt = useCut((s) => s.sheetAt);
  const changed = useCut((s) => s.changed);
  const marks = useCut((s) => s.wishes.witness);
  const tabs = useCut((s) => s.wishes.tabs || s.wishes.held.length > 0);
  const selected = useCut((s) => s.selected);
  const plate = planned?.job.sheets[sheetAt]?.plates.find(({ id }) => id === selected);
  const [size, setSize] = useState<SizeWish>('leads');
  const [witness, setWitness] = useState(true);
  const [moves, setMoves] = useState(false);
  const hasLeads = size === 'leads' || size === 'joined';
  /** Allowed for these changes, and for no later ones. */
  const [allowed, setAllowed] = useState<readonly unknown[]>([]);
  const isOutdated = changed.length > 0 && allowed !== changed;
  const isForeign = useFilesHeld();
  const isHeld = isOutdated || isForeign;
  const [phase, setPhase] = useState<{ readonly making: boolean; readonly sentence: string; readonly bad?: boolean }>({
    making: false,
    sentence: '',
  });
  if (!planned) return <p className={text.note}>{t('cut.order.notYet')}</p>;

  async function take(wanted: WantedJobFile): Promise<void> {
    setPhase({ making: true, sentence: t('take.making') });
    const made = await work
      .files(wanted, { size, witness: witness && marks, moves: moves && hasLeads, evenOutdated: !isOutdated })
      .catch(() => undefined);
    if (made === undefined || 'problem' in made) {
      setPhase({ making: false, sentence: t(made?.problem ?? 'trouble.files'), bad: true });
      return;
    }
    saveFile(made.file);
    setPhase({ making: false, sentence: t('take.done', { count: 1 }) });
  }

  const button = (wanted: WantedJobFile, label: string, face: string, sign = <Shapes size={16} aria-hidden />) => (
    <Button
      key={label}
      kind="plain"
      disabled={phase.making || isHeld}
      aria-label={label}
      onClick={() => void take(wanted)}
    >
      {sign} {face}
    </Button>
  );
  const list = <FileText size={16} aria-hidden />;
  return (
    <>
      {isForeign && <p className={text.bad}>{t('trouble.numbers.held')}</p>}
      {changed.length > 0 && (
        <div className={css.list}>
          <p className={text.bad}>
            <strong>{t('cut.changed.title')}</strong> {[...new Set(changed.map(refusalWords))].join(' ')}
          </p>
          <Check
            label={
              <>
                {t('cut.files.outdated')}
                <span className={text.sub}>{t('cut.files.outdatedHint')}</span>
              </>
            }
            checked={!isOutdated}
            onChange={(on) => setAllowed(on ? changed : [])}
          />
        </div>
      )}
      <Choice<SizeWish>
        legend={t('cut.files.size')}
        showLegend
        value={size}
        options={(['leads', 'joined', 'path', 'net'] as const).map((value) => ({
          value,
          label: t(`cut.files.sizes.${value}`),
        }))}
        onChange={setSize}
      />
      <p className={text.note}>{t(`cut.files.about.${size}`)}</p>
      {size === 'net' && tabs && <p className={text.look}>{t('cut.files.noTabs')}</p>}
      {marks && <Check label={t('cut.files.marks')} checked={witness} onChange={setWitness} />}
      {hasLeads && (
        <Check
          label={
            <>
              {t('cut.files.moves')}
              <span className={text.sub}>{t('cut.files.movesHint')}</span>
            </>
          }
          checked={moves}
          onChange={setMoves}
        />
      )}
      <div className={css.item}>
        <p>{t('cut.files.sheet', { number: sheetAt + 1 })}</p>
        <div className={css.buttons}>
          {button({ kind: 'dxf', sheet: sheetAt }, t('cut.files.sheetDxf'), 'DXF')}
          {button({ kind: 'svg', sheet: sheetAt }, t('cut.files.sheetSvg'), 'SVG')}
          {button({ kind: 'list-csv', sheet: sheetAt }, t('cut.files.listCsv'), 'CSV', list)}
          {button({ kind: 'list-pdf', sheet: sheetAt }, t('cut.files.listPdf'), 'PDF', list)}
        </div>
      </div>
      <div className={css.item}>
        <p>{plate ? t('cut.files.plate', { plate: plate.id }) : t('cut.files.noPlate')}</p>
        {plate && (
          <div className={css.buttons}>
            {button({ kind: 'dxf', sheet: sheetAt, plate }, t('cut.files.plateDxf', { plate: plate.id }), 'DXF')}
            {button({ kind: 'svg', sheet: sheetAt, plate }, t('cut.files.plateSvg', { plate: plate.id }), 'SVG')}
          </div>
        )}
      </div>
      <Button kind="next" disabled={phase.making || isHeld} onClick={() => void take({ kind: 'zip' })}>
        <Download size={18} aria-hidden /> {t('cut.files.zip')}
      </Button>
      <p role="status" className={phase.bad ? text.bad : text.note}>
        {phase.sentence}
      </p>
    </>
  );
}
