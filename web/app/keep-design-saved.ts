import { readDesign } from '../../geometry/design/read-design.ts';
import { designText } from '../../geometry/design/write-design.ts';
import { restoreSaved } from '../actions/restore-saved.ts';
import { createSaver, readAside, readSaved, setAside, type Keep } from '../state/saving.ts';
import { t } from '../words/t.ts';
import type { Page } from './page-context.ts';

/** Takes up where the last visit ended, then saves each change. Resolves when the design to begin with is there. */
export async function keepDesignSaved(page: Page, keep: Keep): Promise<void> {
  const { design, ui, saving } = page;
  const saved = await readSaved(keep);
  if (saved !== undefined) {
    const read = readDesign(saved);
    if ('design' in read) {
      design.getState().apply(restoreSaved(design.getState().history.present, read.design));
    } else {
      const safe = await setAside(keep, saved);
      ui.getState().set({ notice: t(safe ? 'trouble.damaged' : 'trouble.damagedLost', { why: read.problem }) });
    }
  }
  saving.getState().set({ aside: await readAside(keep) });
  const saver = createSaver(keep, (state) => saving.getState().set({ state }));
  design.subscribe((now, before) => {
    if (now.history.present !== before.history.present) saver.schedule(designText(now.history.present));
  });
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') void saver.flush();
  });
  window.addEventListener('pagehide', () => void saver.flush());
}
