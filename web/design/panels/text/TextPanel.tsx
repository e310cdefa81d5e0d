import { CircleDotDashed, ListChecks, Plus } from 'lucide-react';
import { useEffect, useState } from 'react';
import { addBorder } from '../../../state/actions/elements/add-border.ts';
import { addLineText } from '../../../state/actions/elements/add-line-text.ts';
import { addRingText } from '../../../state/actions/elements/add-ring-text.ts';
import { useAct, useDesign, usePage } from '../../../page/page-context.ts';
import { fromRim } from '../../../state/from-rim.ts';
import type { Change } from '../../../state/change.ts';
import type { Design } from '../../../../geometry/design/schema.ts';
import { Button } from '../../../ui/Button.tsx';
import { t } from '../../../words/t.ts';
import { AddDrawing } from './AddDrawing.tsx';
import { ElementRow } from './ElementRow.tsx';
import css from './TextPanel.module.css';

/** First question: what shall it say? The texts as plain fields, from the rim to the centre. */
export function TextPanel() {
  const design = useDesign();
  const { ui } = usePage();
  const act = useAct();

  const [fresh, setFresh] = useState<{ readonly id: string } | undefined>();

  // what was just added is what one types into next
  useEffect(() => {
    if (fresh === undefined) return;
    const field = document.querySelector<HTMLInputElement>(`[data-field="${CSS.escape(fresh.id)}"]`);
    field?.focus();
    field?.select();
  }, [fresh]);

  function add(action: (design: Design) => Change): void {
    act((before) => {
      const change = action(before);
      const added = change.design.elements.at(-1);
      if (added !== undefined) ui.getState().set({ selectedId: added.id });
      setFresh(added);
      return change;
    });
  }

  const elements = fromRim(design);
  return (
    <>
      <div className={css.again}>
        <Button kind="plain" onClick={() => ui.getState().set({ begin: 'choose' })}>
          <CircleDotDashed size={16} aria-hidden /> {t('ask.again')}
        </Button>
        {design.beginning !== undefined && (
          <Button kind="plain" onClick={() => ui.getState().set({ begin: undefined })}>
            <ListChecks size={16} aria-hidden /> {t('ask.back')}
          </Button>
        )}
        <p>{t('ask.againHint')}</p>
      </div>
      <section aria-labelledby="elements-title">
        <h3 id="elements-title" tabIndex={-1} className={css.title}>
          {t('say.elements')}
        </h3>
        {elements.length === 0 && <p className={css.nothing}>{t('say.nothing')}</p>}
        <ol className={css.list}>
          {elements.map((element) => (
            <ElementRow key={element.id} element={element} />
          ))}
        </ol>
        <div className={css.add} role="group" aria-label={t('say.add')}>
          <Button kind="plain" onClick={() => add(addRingText)}>
            <Plus size={16} aria-hidden /> {t('say.addRing')}
          </Button>
          <Button kind="plain" onClick={() => add(addLineText)}>
            <Plus size={16} aria-hidden /> {t('say.addLine')}
          </Button>
          <Button kind="plain" onClick={() => add(addBorder)}>
            <Plus size={16} aria-hidden /> {t('say.addBorder')}
          </Button>
          <AddDrawing />
        </div>
      </section>
    </>
  );
}
