import { isText } from '../../../../geometry/design/kinds.ts';
import { Undo2 } from 'lucide-react';
import type { BridgeEdit } from '../../../../geometry/design/schema.ts';
import { shortText } from '../../../../geometry/sentences/shorten.ts';
import { forgetEdits } from '../../../state/actions/bridges/forget-edits.ts';
import { forgetEditsOn } from '../../../state/actions/bridges/forget-edits-on.ts';
import { countedEdits } from '../../../state/actions/elements/former-place.ts';
import { useAct, useDesign, usePage } from '../../../page/page-context.ts';
import { Button } from '../../../ui/Button.tsx';
import { t } from '../../../words/t.ts';
import layout from '../../../ui/layout.module.css';
import css from './HandBridges.module.css';
import { shapeName } from '../../../words/say/record-words.ts';

/** What was changed about bridges by hand, letter by letter, and the way back. */
export function HandBridges() {
  const design = useDesign();
  const { ui } = usePage();
  const act = useAct();
  const counted = countedEdits(design.bridges.edits);
  const groups = new Map<string, BridgeEdit[]>();
  for (const edit of counted) {
    const shape = `${edit.element}/${edit.shape}`;
    groups.set(shape, [...(groups.get(shape) ?? []), edit]);
  }
  const textOf = (id: string): string => {
    const element = design.elements.find((e) => e.id === id);
    return element === undefined || !isText(element) ? '' : shortText(element.text);
  };
  const work = (bridgeKey?: string): void =>
    ui.getState().set({ view: 'plate', bridging: true, bridgeKey, addingBridge: false });
  return (
    <div className={css.hand}>
      <p className={counted.length === 0 ? css.none : css.count}>
        {counted.length === 0 ? t('bridges.none') : t('bridges.count', { count: counted.length })}
      </p>
      {groups.size > 0 && (
        <ul className={css.list}>
          {[...groups].map(([shape, edits]) => {
            const first = edits[0];
            if (first === undefined) return null;
            const what = rowWords(first.label, textOf(first.element));
            return (
              <li key={shape} className={css.row}>
                <button
                  type="button"
                  className={css.show}
                  onClick={() => work(edits.find((e) => e.kind === 'keep')?.id)}
                >
                  <span>{what}</span>
                  <span className={css.kinds}>{kindsOf(edits)}</span>
                </button>
                <Button
                  kind="quiet"
                  aria-label={t('bridges.rowBack', { what })}
                  onClick={() => act((d) => forgetEditsOn(d, shape))}
                >
                  {t('bridges.rowBackShort')}
                </Button>
              </li>
            );
          })}
        </ul>
      )}
      <div className={layout.buttons}>
        <Button kind="plain" onClick={() => work()}>
          {t('bridges.work')}
        </Button>
        {counted.length > 0 && (
          <Button
            kind="quiet"
            onClick={() => {
              act((d) => forgetEdits(d, 'all'));
              ui.getState().set({ bridgeKey: undefined, notice: t('bridges.allDone') });
            }}
          >
            <Undo2 size={16} aria-hidden /> {t('bridges.all')}
          </Button>
        )}
      </div>
    </div>
  );
}

/** `Letter O in “PERRY”`. */
function rowWords(label: string, text: string): string {
  const said = shapeName(label);
  const name = said.charAt(0).toUpperCase() + said.slice(1);
  return text === '' ? name : t('bridges.row', { name, text });
}

/** `2 placed, 1 removed`. */
function kindsOf(edits: readonly BridgeEdit[]): string {
  return (['keep', 'drop'] as const)
    .map((kind) => ({ kind, n: edits.filter((e) => e.kind === kind).length }))
    .filter(({ n }) => n > 0)
    .map(({ kind, n }) => `${n} ${t(`bridges.kinds.${kind}`)}`)
    .join(', ');
}
