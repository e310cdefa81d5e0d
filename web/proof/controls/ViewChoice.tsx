import { Choice } from '../../ui/fields/Choice.tsx';
import { t } from '../../words/t.ts';
import { useProof, useProofParts } from '../state/proof-context.ts';

/** Whether pictures show the mark on the barrel or the plate itself. */
export function ViewChoice({ quiet }: { readonly quiet?: boolean }) {
  const { store } = useProofParts();
  const view = useProof((s) => s.view);
  return (
    <Choice
      legend={t('page.views.legend')}
      quiet={quiet}
      value={view}
      options={(['barrel', 'plate'] as const).map((value) => ({ value, label: t(`proof.view.${value}`) }))}
      onChange={(to) => store.getState().set({ view: to })}
    />
  );
}
