import { Table2 } from 'lucide-react';
import { useState, type DragEvent } from 'react';
import { saveFile } from '../../page/save-file.ts';
import { useDesign, useUi } from '../../page/page-context.ts';
import { useFilesHeld } from '../../page/use-files-held.ts';
import { Button } from '../../ui/Button.tsx';
import { findingWords, refusalWords } from '../../words/say/finding-words.ts';
import { t } from '../../words/t.ts';
import type { SeriesHead, SeriesProgress, SeriesRow } from '../../worker/cut-api.ts';
import { clock } from '../state/clock.ts';
import { useCutParts } from '../state/cut-context.ts';
import { FileButton } from '../../ui/FileButton.tsx';
import text from '../../ui/text.module.css';
import css from './folds.module.css';

type Phase =
  | { readonly kind: 'rest' }
  | { readonly kind: 'running'; readonly progress: SeriesProgress; readonly leftS?: number | undefined }
  | { readonly kind: 'ended'; readonly sentence: string; readonly failed: readonly SeriesRow[] }
  | { readonly kind: 'failed'; readonly sentence: string };

interface Table {
  readonly name: string;
  readonly bytes: Uint8Array;
  readonly head: SeriesHead;
}

const LISTED = 50;

/** A table from a spreadsheet fills the {column} places of the open design: a plate a row, into one archive. */
export function SeriesFold() {
  const { work } = useCutParts();
  const { title } = useDesign();
  const [table, setTable] = useState<Table | undefined>();
  const held = useFilesHeld();
  const [over, setOver] = useState(false);
  const [phase, setPhase] = useState<Phase>({ kind: 'rest' });

  async function read([file]: readonly File[]): Promise<void> {
    if (!file) return;
    setPhase({ kind: 'rest' });
    try {
      const bytes = new Uint8Array(await file.arrayBuffer());
      setTable({ name: file.name, bytes, head: await work.readTable(bytes) });
    } catch {
      setPhase({ kind: 'failed', sentence: t('trouble.unreadable') });
    }
  }

  async function run({ name, bytes }: Table, anew: boolean): Promise<void> {
    const begun = performance.now();
    let last: SeriesProgress = { done: 0, of: 0, known: 0, failed: [] };
    setPhase({ kind: 'running', progress: last });
    const end = await work
      .series(bytes, anew, (progress) => {
        last = progress;
        const leftS = secondsLeft(progress, (performance.now() - begun) / 1000);
        setPhase((now) => (now.kind === 'running' ? { kind: 'running', progress, leftS } : now));
      })
      .catch(() => ({ problem: 'trouble.files' as const }));
    if ('refused' in end) setPhase({ kind: 'failed', sentence: refusalWords(end.refused) });
    else if ('problem' in end) setPhase({ kind: 'failed', sentence: t(end.problem) });
    else {
      if (end.made > 0) saveFile(end.file);
      const sentence = t(end.cancelled ? 'cut.series.cancelled' : 'cut.series.done', { made: end.made, of: end.of });
      setPhase({ kind: 'ended', sentence, failed: last.failed });
    }
    setTable({ name, bytes, head: await work.readTable(bytes) });
  }

  function drop(e: DragEvent): void {
    e.preventDefault();
    setOver(false);
    void read([...e.dataTransfer.files]);
  }

  const head = table?.head;
  const failed = phase.kind === 'running' ? phase.progress.failed : phase.kind === 'ended' ? phase.failed : [];
  return (
    <>
      <p className={text.note}>{t('cut.series.what', { title })}</p>
      <div
        className={css.drop}
        data-over={over}
        onDragOver={(e) => {
          e.preventDefault();
          setOver(true);
        }}
        onDragLeave={() => setOver(false)}
        onDrop={drop}
      >
        <FileButton accept=".csv,.tsv,.txt,text/csv" onFiles={(files) => void read(files)}>
          <Table2 size={16} aria-hidden /> {t('cut.series.choose')}
        </FileButton>
        <span className={text.note}>{t('cut.series.drop')}</span>
      </div>
      {table && head && 'refused' in head && (
        <p role="alert" className={text.bad}>
          <bdi>{table.name}</bdi>: {refusalWords(head.refused)}
        </p>
      )}
      {table && head && 'columns' in head && (
        <>
          <p data-testid="series-head">
            {t('cut.series.head', { file: table.name, rows: head.rows, columns: head.columns.join(', ') })}{' '}
            {head.first !== undefined && t('cut.series.first', { first: head.first })}
          </p>
          {phase.kind === 'running' ? (
            <>
              <progress
                className={css.progress}
                max={phase.progress.of || head.rows}
                value={phase.progress.done}
                aria-label={t('cut.series.progress')}
              />
              <div className={css.head}>
                <span>
                  {t('cut.series.at', { done: phase.progress.done, of: head.rows })}{' '}
                  <span className={text.sub}>
                    {phase.progress.known > 0 && t('cut.series.fromBefore', { count: phase.progress.known })}{' '}
                    {phase.leftS !== undefined && t('cut.series.left', { time: clock(phase.leftS) })}
                  </span>
                </span>
                <Button kind="plain" onClick={work.cancelSeries}>
                  {t('cut.series.cancel')}
                </Button>
              </div>
            </>
          ) : (
            <>
              {held && <p className={text.bad}>{t('trouble.numbers.held')}</p>}
              {head.known > 0 && <p className={text.note}>{t('cut.series.known', { count: head.known })}</p>}
              <div className={css.buttons}>
                <Button kind="next" disabled={held} onClick={() => void run(table, false)}>
                  {head.known > 0 && head.known < head.rows
                    ? t('cut.series.goOn', { count: head.rows - head.known })
                    : t('cut.series.make', { count: head.rows })}
                </Button>
                {head.known > 0 && (
                  <Button kind="quiet" disabled={held} onClick={() => void run(table, true)}>
                    {t('cut.series.anew')}
                  </Button>
                )}
              </div>
            </>
          )}
        </>
      )}
      {phase.kind === 'failed' && (
        <p role="alert" className={text.bad}>
          {phase.sentence}
        </p>
      )}
      {phase.kind === 'ended' && (
        <p role="status" data-testid="series-end">
          {phase.sentence}
        </p>
      )}
      {failed.length > 0 && <Failed rows={failed} />}
    </>
  );
}

/** By the pace of the rows that this run made; undefined before there is one. */
function secondsLeft({ done, of, known }: SeriesProgress, sinceS: number): number | undefined {
  const made = done - known;
  return made < 3 ? undefined : (sinceS / made) * (of - done);
}

function Failed({ rows }: { readonly rows: readonly SeriesRow[] }) {
  const unit = useUi((s) => s.unit);
  const why = ({ reason }: SeriesRow): string => {
    if (!reason) return '';
    return 'problem' in reason ? refusalWords(reason) : findingWords(reason, unit);
  };
  return (
    <section aria-label={t('cut.series.failed')} className={css.list}>
      <h3 className={css.name}>
        <strong>{t('cut.series.failed')}</strong>
      </h3>
      <ul className={css.list}>
        {rows.slice(0, LISTED).map((row) => (
          <li key={row.line}>
            <strong>{t('cut.series.line', { line: row.line })}</strong> <bdi>{row.name}</bdi>{' '}
            <span className={text.bad}>{why(row)}</span>
          </li>
        ))}
      </ul>
      {rows.length > LISTED && <p className={text.note}>{t('cut.order.more', { count: rows.length - LISTED })}</p>}
    </section>
  );
}
