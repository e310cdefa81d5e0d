import { Copy, FileWarning, Pencil, Save, Trash2, Undo2, type LucideIcon } from 'lucide-react';
import { useEffect, useRef, useState } from 'react';
import { LONGEST_TITLE } from '../../state/actions/agreed/set-title.ts';
import { usePage } from '../page-context.ts';
import { saveFile } from '../save-file.ts';
import type { Done } from '../../state/own/card-list.ts';
import type { Card } from '../../state/card.ts';
import { IconButton } from '../../ui/IconButton.tsx';
import { t } from '../../words/t.ts';
import { fileStem } from '../../worker/file-stem.ts';
import { cardTitle } from './card-title.ts';
import css from './MyDesigns.module.css';

interface MyDesignCardProps {
  readonly card: Card;
  readonly isOpen: boolean;
  readonly onOpen: () => void;
  readonly onBin: () => void;
  readonly onDone: (done: Done) => void;
}

/** One own design: its picture opens it; what else can be done with it stands below. */
export function MyDesignCard({ card, isOpen, onOpen, onBin, onDone }: MyDesignCardProps) {
  const { list } = usePage();
  const [naming, setNaming] = useState(false);
  const title = cardTitle(card);
  const inBin = card.binnedMs !== undefined;
  const canOpen = !inBin && !card.damaged;

  async function saveAsFile(): Promise<void> {
    const text = await list.textOf(card.id);
    if (text === undefined) onDone({ problem: t('keep.gone') });
    else
      saveFile({
        name: `${fileStem(card.title)}.json`,
        type: 'application/json',
        bytes: new TextEncoder().encode(text),
      });
  }

  const tool = (what: string, sign: LucideIcon, onClick: () => void) => (
    <IconButton label={t('designs.more', { what, title })} title={what} sign={sign} onClick={onClick} />
  );

  return (
    <li className={css.card} data-open={isOpen || undefined}>
      {canOpen ? (
        <button type="button" className={css.picture} aria-label={t('designs.open', { title })} onClick={onOpen}>
          <CardPicture card={card} />
        </button>
      ) : (
        <span className={css.picture}>
          <CardPicture card={card} />
        </span>
      )}
      {naming ? (
        <NameField
          before={card.title}
          onEnd={(name) => {
            setNaming(false);
            if (name !== undefined && name !== card.title) void list.rename(card.id, name).then(onDone);
          }}
        />
      ) : (
        <p className={css.name}>{title}</p>
      )}
      <p className={css.when}>
        {card.damaged
          ? t('designs.damaged')
          : isOpen
            ? t('designs.openNow')
            : t('designs.changed', { when: whenOf(card) })}
      </p>
      <div className={css.tools}>
        {canOpen && (
          <>
            {tool(t('designs.rename'), Pencil, () => setNaming(true))}
            {tool(t('designs.duplicate'), Copy, () => void list.duplicate(card.id).then(onDone))}
          </>
        )}
        {tool(t('designs.saveFile'), Save, () => void saveAsFile())}
        {inBin && tool(t('designs.putBack'), Undo2, () => void list.putBack(card.id).then(onDone))}
        {inBin
          ? tool(t('designs.discard'), Trash2, () => void list.discard(card.id).then(onDone))
          : tool(t('designs.delete'), Trash2, onBin)}
      </div>
    </li>
  );
}

function CardPicture({ card }: { readonly card: Card }) {
  if (card.damaged) return <FileWarning size={32} strokeWidth={1.25} aria-hidden />;
  return (
    <svg viewBox="-100 -100 200 200" aria-hidden focusable="false">
      <circle r="100" className={css.metal} />
      {card.picture && <path d={card.picture.path} fillRule="evenodd" className={css.cut} />}
    </svg>
  );
}

/** Enter or leaving the field keeps the name, Escape the old one. */
function NameField({ before, onEnd }: { readonly before: string; readonly onEnd: (name: string | undefined) => void }) {
  const field = useRef<HTMLInputElement>(null);
  const ended = useRef(false);
  useEffect(() => field.current?.select(), []);
  const end = (name: string | undefined): void => {
    if (ended.current) return;
    ended.current = true;
    onEnd(name);
  };
  return (
    <input
      ref={field}
      className={css.naming}
      aria-label={t('designs.renameLabel')}
      defaultValue={before}
      maxLength={LONGEST_TITLE}
      autoComplete="off"
      onBlur={(e) => end(e.target.value)}
      onKeyDown={(e) => {
        if (e.key === 'Enter') end(e.currentTarget.value);
        if (e.key === 'Escape') {
          e.preventDefault();
          end(undefined);
        }
      }}
    />
  );
}

/** Day and time as the page's language writes them. */
function whenOf({ changedMs }: Card): string {
  const { lang } = document.documentElement;
  return new Intl.DateTimeFormat(lang === '' ? undefined : lang, { dateStyle: 'medium', timeStyle: 'short' }).format(
    changedMs,
  );
}
