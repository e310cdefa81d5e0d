import { ChevronDown, ChevronUp, LoaderCircle } from 'lucide-react';
import { lengthWords } from '../words/say/format-number.ts';
import { VerdictMark } from '../ui/VerdictMark.tsx';
import { later } from '../ui/later.tsx';
import { plateInShort } from '../words/plate-in-short.ts';
import { t, withWords } from '../words/t.ts';
import { verdictSentence } from '../words/verdict-sentence.ts';
import { OtherVerdict } from './OtherVerdict.tsx';
import { useCurrentPlate, usePage, usePlates, useUi } from '../page/page-context.ts';
import { useLasting } from './use-lasting.ts';
import css from './VerdictBar.module.css';

// how a price is made is large, and nobody asks for it before there is a plate
const PriceLine = later(
  async () => (await withWords(import('../handover/price/PriceLine.tsx'), 'work', 'proof')).PriceLine,
);
const FindingsList = later(async () => (await withWords(import('./FindingsList.tsx'), 'work')).FindingsList);
const HaltNote = later(async () => (await withWords(import('./HaltNote.tsx'), 'work')).HaltNote);

/** A quick change is shown as the plate it gives; only a slow one says that it is at work. */
const SLOW_MS = 600;

/** The verdict, always in sight, as a sentence; behind it the findings. */
export function VerdictBar() {
  const { ui } = usePage();
  const { plate } = useCurrentPlate();
  const trouble = usePlates((s) => s.trouble);
  const halt = usePlates((s) => s.halt);
  const busy = usePlates((s) => s.busy);
  const open = useUi((s) => s.findingsOpen);
  const unit = useUi((s) => s.unit);
  const choosing = useUi((s) => s.begin === 'choose');
  const findings = plate?.findings ?? [];
  const count = (severity: string): number => findings.filter((f) => f.severity === severity).length;
  // what stood here is no longer true of the design once a change takes its time
  const outdated = useLasting(busy, SLOW_MS);
  const failed = plate === undefined && (trouble ?? halt) !== undefined && !busy;
  const sentence =
    failed || plate === undefined || outdated
      ? t(failed ? (halt?.why === 'before' ? 'verdict.waiting' : 'verdict.failed') : 'verdict.working')
      : plate.measures.openings === 0 && plate.verdict !== 'stop'
        ? t('verdict.none')
        : verdictSentence(plate.verdict, count('stop'), count('look'));
  const notes = count('note');
  const shown = open && findings.length > 0;
  return (
    <section className={css.verdict} aria-label={t('verdict.list')}>
      {halt !== undefined && !busy && <HaltNote />}
      {trouble !== undefined && halt === undefined && (
        <p className={css.trouble} role="alert">
          {t(plate === undefined && trouble === 'trouble.worker' ? 'trouble.noPlate' : trouble)}
        </p>
      )}
      {shown && <FindingsList findings={findings} />}
      <div className={css.line} data-busy={busy || undefined}>
        {failed ? (
          <VerdictMark verdict="stop" size={22} silent />
        ) : plate === undefined || outdated ? (
          <LoaderCircle className={css.turning} size={22} aria-hidden />
        ) : (
          <VerdictMark verdict={plate.verdict} size={22} silent />
        )}
        <p role="status" className={css.sentence} data-testid="verdict">
          {sentence}
        </p>
        <OtherVerdict />
        {plate !== undefined && (
          <p className={css.figures}>
            {lengthWords(plate.diameterMm, unit)} · {plateInShort(plate.measures.openings, plate.measures.bridges)}
            {plate.measures.leastBridgeMm !== undefined &&
              ` · ${t('figures.narrowest', { width: lengthWords(plate.measures.leastBridgeMm, unit, unit === 'mm' ? 1 : 3) })}`}
          </p>
        )}
        {plate !== undefined && !choosing && <PriceLine />}
        {findings.length > 0 && (
          <button
            type="button"
            className={css.toggle}
            aria-expanded={shown}
            onClick={() => ui.getState().set({ findingsOpen: !open, litFinding: undefined })}
          >
            <span>
              {shown
                ? t('verdict.hide')
                : findings.length === notes
                  ? t('verdict.notes', { count: notes })
                  : t('verdict.show')}
            </span>
            {shown ? <ChevronDown size={18} aria-hidden /> : <ChevronUp size={18} aria-hidden />}
          </button>
        )}
      </div>
    </section>
  );
}
