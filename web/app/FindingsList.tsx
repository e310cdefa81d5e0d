import { useEffect, useRef } from 'react';
import type { Finding } from '../../geometry/findings.ts';
import { isElementId } from '../../geometry/layout/no-element.ts';
import { applyMend } from '../state/actions/apply-mend.ts';
import { Button } from '../ui/Button.tsx';
import { findingWords, mendWords } from '../words/say/finding-words.ts';
import { t } from '../words/t.ts';
import css from './FindingsList.module.css';
import { useAct, usePage, useUi } from '../page/page-context.ts';

/** All findings, numbered as they are pinned on the plate, each with its mend where there is one. */
export function FindingsList({ findings }: { readonly findings: readonly Finding[] }) {
  const { ui } = usePage();
  const act = useAct();
  const unit = useUi((s) => s.unit);
  const lit = useUi((s) => s.litFinding);
  const list = useRef<HTMLOListElement>(null);

  useEffect(() => {
    if (lit !== undefined) list.current?.children[lit]?.scrollIntoView({ block: 'nearest' });
  }, [lit]);

  function show(index: number): void {
    const id = findings[index]?.elementIds.find(isElementId);
    ui.getState().set({
      litFinding: lit === index ? undefined : index,
      view: 'plate',
      ...(id === undefined ? {} : { selectedId: id }),
    });
  }

  return (
    <ol ref={list} className={css.list} aria-label={t('verdict.list')}>
      {findings.map((finding, i) => {
        const { mend } = finding;
        return (
          <li key={`${finding.code}-${i}`} className={css.item} data-lit={lit === i || undefined}>
            <button
              type="button"
              className={css.pin}
              data-severity={finding.severity}
              aria-pressed={lit === i}
              aria-label={`${i + 1}. ${t('verdict.place')}`}
              title={t('verdict.place')}
              onClick={() => show(i)}
            >
              {i + 1}
            </button>
            <div className={css.text}>
              <p className={css.severity}>{t(`verdict.severity.${finding.severity}`)}</p>
              <p>{findingWords(finding, unit)}</p>
            </div>
            {mend !== undefined && (
              <Button
                kind="plain"
                onClick={() => {
                  ui.getState().set({ litFinding: undefined });
                  act((d) => applyMend(d, mend.change));
                }}
              >
                {mendWords(mend, unit)}
              </Button>
            )}
          </li>
        );
      })}
    </ol>
  );
}
