import { FileType2 } from 'lucide-react';
import { useState } from 'react';
import { addOwnFace } from '../../../state/actions/elements/add-own-face.ts';
import { readOwnFace } from './read-own-face.ts';
import { usePage } from '../../../page/page-context.ts';
import { FileButton } from '../../../ui/FileButton.tsx';
import { t } from '../../../words/t.ts';
import css from './OwnFaceField.module.css';

/** A person's own font file; a broken one gets a sentence and nothing is lost. */
export function OwnFaceField({ elementId }: { readonly elementId: string | undefined }) {
  const { design, ui } = usePage();
  const [problem, setProblem] = useState<string | undefined>();

  async function take(file: File | undefined): Promise<void> {
    if (file === undefined) return;
    const read = await readOwnFace(file);
    if ('problem' in read) {
      setProblem(read.problem);
      return;
    }
    const state = design.getState();
    const before = state.history.present;
    const change = addOwnFace(before, read.ownFace, elementId);
    setProblem(change.design === before ? t('look.ownFull') : undefined);
    if (change.design === before) return;
    state.apply(change);
    ui.getState().set({ notice: t('look.ownAdded', { name: read.ownFace.name }) });
  }

  return (
    <section className={css.own} aria-labelledby="own-title">
      <h3 id="own-title" className={css.title}>
        {t('look.own')}
      </h3>
      <p className={css.hint}>{t('look.ownHint')}</p>
      <FileButton
        accept=".ttf,.otf,.woff,font/ttf,font/otf,font/woff"
        testId="own-face"
        onFiles={([file]) => void take(file)}
      >
        <FileType2 size={16} aria-hidden /> {t('look.ownButton')}
      </FileButton>
      <p role="alert" className={css.problem}>
        {problem}
      </p>
    </section>
  );
}
