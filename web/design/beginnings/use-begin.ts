import { emptyDesign } from '../../../geometry/design/defaults.ts';
import { beginWith } from '../../state/actions/begin-with.ts';
import { isOrderFile, lookAtOrder } from '../../handover/order/order-store.ts';
import { t } from '../../words/t.ts';
import { BEGINNINGS, type Beginning } from './beginnings.ts';
import { begun } from './first-design.ts';
import { openDesignFile } from '../../handover/open-design-file.ts';
import { usePage } from '../../page/page-context.ts';

const READY = [...BEGINNINGS, emptyDesign()];

/** The ways to begin; what was open before stays among the own designs, and undo brings it back. */
export function useBegin(): {
  readonly readyMade: (beginning: Beginning) => void;
  readonly empty: () => void;
  readonly file: (chosen: File) => Promise<void>;
} {
  const { ui, own } = usePage();

  function settled(notice: string | undefined): void {
    ui.getState().set({
      selectedId: undefined,
      litFinding: undefined,
      plateId: undefined,
      findingsOpen: false,
      view: 'plate',
      notice,
      begin: undefined,
      step: 'say',
    });
  }

  return {
    readyMade(beginning) {
      own.begin((before) => beginWith(before, begun(beginning), READY), 'when-changed');
      settled(undefined);
    },
    empty() {
      own.begin((before) => beginWith(before, emptyDesign(), READY), 'when-changed');
      settled(t('begin.begun', { title: t('begin.emptyHead') }));
    },
    async file(chosen) {
      if (isOrderFile(chosen)) {
        lookAtOrder(chosen);
        return;
      }
      const opened = await openDesignFile(chosen);
      if (!('design' in opened)) {
        ui.getState().set({ notice: opened.problem });
        return;
      }
      own.begin((before) => beginWith(before, opened.design));
      settled(t('begin.opened', { title: opened.design.title }));
    },
  };
}
