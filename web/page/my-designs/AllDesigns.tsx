import { useState } from 'react';
import { LARGEST_BYTES, type TakenIn } from '../../state/own/all-designs.ts';
import { lastSavedAllMs, noteSavedAll } from '../../state/own/keep-safe.ts';
import { Button } from '../../ui/Button.tsx';
import { FileButton } from '../../ui/FileButton.tsx';
import { t } from '../../words/t.ts';
import { usePage } from '../page-context.ts';
import { saveFile } from '../save-file.ts';
import layout from '../../ui/layout.module.css';
import css from './MyDesigns.module.css';

/** All own designs as one file, to be kept elsewhere, and such a file taken in again. */
export function AllDesigns() {
  const { list } = usePage();
  const [said, setSaid] = useState<string | undefined>(lastSaved);

  async function save(): Promise<void> {
    const packed = await list.packAll();
    if ('problem' in packed) return setSaid(packed.problem);
    const day = new Date().toISOString().slice(0, 10);
    saveFile({
      name: `bridgehead-designs-${day}.json`,
      type: 'application/json',
      bytes: new TextEncoder().encode(packed.text),
    });
    try {
      noteSavedAll(localStorage, Date.now());
    } catch {
      // then the reminder comes though it was done
    }
    setSaid(t('designs.all.saved', { count: packed.count }));
  }

  async function takeIn(file: File | undefined): Promise<void> {
    if (file === undefined) return;
    if (file.size > LARGEST_BYTES) return setSaid(t('designs.all.none'));
    const text = await file.text().catch(() => undefined);
    const done = text === undefined ? { problem: t('trouble.unreadable') } : await list.takeIn(text);
    setSaid(done === undefined ? t('designs.all.none') : 'problem' in done ? done.problem : sayTaken(done));
  }

  return (
    <div className={css.all}>
      <div className={layout.buttons}>
        <Button kind="plain" onClick={() => void save()}>
          {t('designs.all.save')}
        </Button>
        <FileButton accept=".json,application/json" onFiles={([file]) => void takeIn(file)}>
          {t('designs.all.takeIn')}
        </FileButton>
      </div>
      <p role="status" className={css.intro}>
        {said}
      </p>
    </div>
  );
}

function sayTaken({ taken, known, refused }: TakenIn): string {
  return [
    t('designs.all.taken', { count: taken }),
    ...(known > 0 ? [t('designs.all.known', { count: known })] : []),
    ...(refused > 0 ? [t('designs.all.refused', { count: refused })] : []),
  ].join(' ');
}

function lastSaved(): string | undefined {
  try {
    const ms = lastSavedAllMs(localStorage);
    if (ms === undefined) return t('designs.all.never');
    const { lang } = document.documentElement;
    const when = new Intl.DateTimeFormat(lang === '' ? undefined : lang, { dateStyle: 'medium' }).format(ms);
    return t('designs.all.last', { when });
  } catch {
    return undefined;
  }
}
