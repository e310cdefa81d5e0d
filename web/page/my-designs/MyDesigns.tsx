import { useEffect, useState } from 'react';
import { usePage, useSaving } from '../page-context.ts';
import { BIN_DAYS, type Done } from '../../state/own/card-list.ts';
import type { Card } from '../../state/card.ts';
import { Button } from '../../ui/Button.tsx';
import { Fold } from '../../ui/Fold.tsx';
import { Dialog } from '../../ui/Dialog.tsx';
import { t } from '../../words/t.ts';
import { AllDesigns } from './AllDesigns.tsx';
import { cardTitle } from './card-title.ts';
import { MyDesignCard } from './MyDesignCard.tsx';
import css from './MyDesigns.module.css';

/** All own designs of this browser with their pictures, newest first, and the bin. */
export function MyDesigns() {
  const { ui, own, list } = usePage();
  const cards = useSaving((s) => s.cards);
  const openId = useSaving((s) => s.openId);
  const [trouble, setTrouble] = useState<string | undefined>();
  const [binned, setBinned] = useState<Card | undefined>();

  useEffect(() => {
    void list.refresh().then((done) => setTrouble(done?.problem));
  }, [list]);

  const close = (): void => ui.getState().set({ designsOpen: false });
  const after = (done: Done): void => setTrouble(done?.problem);

  async function open(card: Card): Promise<void> {
    if (card.id !== openId) {
      const done = await own.open(card.id).catch(() => ({ problem: t('keep.storeTrouble') }));
      if (done) {
        after(done);
        return;
      }
      ui.getState().set({
        selectedId: undefined,
        litFinding: undefined,
        plateId: undefined,
        begin: undefined,
        notice: undefined,
      });
    }
    close();
  }

  async function bin(card: Card): Promise<void> {
    const done = await list.bin(card.id);
    after(done);
    if (!done) setBinned(card);
  }

  const kept = cards?.filter((card) => card.binnedMs === undefined) ?? [];
  const gone = cards?.filter((card) => card.binnedMs !== undefined) ?? [];
  const show = (card: Card) => (
    <MyDesignCard
      key={card.id}
      card={card}
      isOpen={card.id === openId}
      onOpen={() => void open(card)}
      onBin={() => void bin(card)}
      onDone={after}
    />
  );
  return (
    <Dialog title={t('designs.title')} closeLabel={t('designs.close')} onClose={close}>
      <p className={css.intro}>{t('designs.intro')}</p>
      <AllDesigns />
      <div role="status">
        {trouble !== undefined && <p className={css.trouble}>{trouble}</p>}
        {binned !== undefined && (
          <p className={css.binned}>
            {t('designs.binned', { title: cardTitle(binned) })}
            <Button
              kind="quiet"
              onClick={() => {
                setBinned(undefined);
                void list.putBack(binned.id).then(after);
              }}
            >
              {t('designs.undo')}
            </Button>
          </p>
        )}
        {cards === undefined && trouble === undefined && <p className={css.intro}>{t('designs.loading')}</p>}
      </div>
      {cards !== undefined && kept.length === 0 && <p className={css.intro}>{t('designs.none')}</p>}
      <ul className={css.cards}>{kept.map(show)}</ul>
      {gone.length > 0 && (
        <Fold title={t('designs.bin', { count: gone.length })}>
          <p className={css.intro}>{t('designs.binHint', { count: BIN_DAYS })}</p>
          <ul className={css.cards}>{gone.map(show)}</ul>
        </Fold>
      )}
    </Dialog>
  );
}
