import { isolate } from '../../../geometry/sentences/isolate.ts';
import { showFingerprint } from '../../../geometry/design/show-fingerprint.ts';
import { FilePlus2, X } from 'lucide-react';
import { useEffect, useState } from 'react';
import { openDesignFile } from '../../handover/open-design-file.ts';
import { usePage, useSaving, useUi } from '../../page/page-context.ts';
import { IconButton } from '../../ui/IconButton.tsx';
import { SelectField } from '../../ui/fields/SelectField.tsx';
import { FileButton } from '../../ui/FileButton.tsx';
import { readOwn } from '../../state/own/read-own.ts';
import { findingWords, refusalWords } from '../../words/say/finding-words.ts';
import { lengthWords } from '../../words/say/format-number.ts';
import { NumberField } from '../../ui/fields/NumberField.tsx';
import { t } from '../../words/t.ts';
import { useCut, useCutParts } from '../state/cut-context.ts';
import type { OrderItem } from '../state/cut-store.ts';
import text from '../../ui/text.module.css';
import css from './folds.module.css';
import { countOf, isSameStock, stockOf, titleOf } from '../state/plates-wanted.ts';

const MOST_PLATES = 5000;

/** The designs of the order with their plates and how many; more from the browser's own, or from files. */
export function WhatIsCut() {
  const { work } = useCutParts();
  const { list, own } = usePage();
  const items = useCut((s) => s.items);
  const cards = useSaving((s) => s.cards);
  const openId = useSaving((s) => s.openId);
  const [trouble, setTrouble] = useState<string | undefined>();

  useEffect(() => {
    void own.flush().then(() => list.refresh());
  }, [own, list]);

  const taken = new Set(items.flatMap(({ origin }) => (origin.kind === 'own' ? [origin.id] : [])));
  const others = (cards ?? []).filter(
    (card) => card.binnedMs === undefined && !card.damaged && card.id !== openId && !taken.has(card.id),
  );

  async function addOwn(id: string): Promise<void> {
    const read = await readOwn(list, id);
    if (!read || !('design' in read)) {
      setTrouble(read ? refusalWords(read) : t('keep.gone'));
      return;
    }
    setTrouble(undefined);
    work.add({ kind: 'own', id }, read.design);
  }

  async function addFiles(files: readonly File[]): Promise<void> {
    setTrouble(undefined);
    for (const file of files) {
      const read = await openDesignFile(file);
      if ('design' in read) work.add({ kind: 'file', name: file.name }, read.design);
      else setTrouble(`${isolate(file.name)}: ${read.problem}`);
    }
  }

  return (
    <>
      <ul className={css.list}>
        {items.map((item) => (
          <Item key={item.key} item={item} alone={items.length === 1} />
        ))}
      </ul>
      {others.length > 0 && (
        <SelectField
          label={t('cut.what.addOwn')}
          value=""
          placeholder={t('cut.what.choose')}
          options={others.map(({ id, title }) => ({ value: id, label: title || t('cut.what.untitled') }))}
          onChange={(id) => void addOwn(id)}
        />
      )}
      <div className={css.buttons}>
        <FileButton accept=".json,application/json" multiple onFiles={(files) => void addFiles(files)}>
          <FilePlus2 size={16} aria-hidden /> {t('cut.what.addFile')}
        </FileButton>
      </div>
      {trouble !== undefined && (
        <p role="alert" className={text.bad}>
          {trouble}
        </p>
      )}
    </>
  );
}

function Item({ item, alone }: { readonly item: OrderItem; readonly alone: boolean }) {
  const { work } = useCutParts();
  const plates = useCut((s) => s.plates);
  const stock = useCut(stockOf);
  const unit = useUi((s) => s.unit);
  const fits = stock !== undefined && isSameStock(stock, item.design.stock);
  const title = titleOf(item.design) || t('cut.what.untitled');
  return (
    <li className={css.item} aria-label={title}>
      <div className={css.head}>
        <p className={css.name}>
          <strong>
            {item.key} · <bdi>{title}</bdi>
          </strong>
          <span className={text.sub}>
            {t(`cut.what.from.${item.origin.kind}`)}
            {plates.find(({ key }) => key === item.key) &&
              ` · ${showFingerprint(plates.find(({ key }) => key === item.key)?.job.fingerprint ?? '')}`}
          </span>
        </p>
        {!alone && <IconButton label={t('cut.what.drop', { title })} onClick={() => work.drop(item.key)} sign={X} />}
      </div>
      {!fits && <p className={text.bad}>{t('cut.what.otherStock')}</p>}
      {item.design.plates.map((spec, i) => {
        const plate = plates.find((p) => p.key === item.key && p.plateId === spec.id);
        const wish = `${item.key}${i + 1}`;
        return (
          <div key={spec.id}>
            <div className={css.row}>
              <p className={css.name}>
                {wish} · <bdi>{spec.name}</bdi>
                {plate && <span className={text.sub}>{lengthWords(plate.diameterMm, unit)}</span>}
              </p>
              <NumberField
                label={t('cut.what.count', { plate: wish })}
                value={countOf(item, spec.id)}
                whole
                least={0}
                most={MOST_PLATES}
                onChange={(count) => work.count(item.key, spec.id, count)}
              />
            </div>
            {plate?.stops.slice(0, 3).map((stop) => (
              <p key={stop.sentence} className={text.bad}>
                {t('cut.what.stopped', { plate: wish })} {findingWords(stop, unit)}
              </p>
            ))}
          </div>
        );
      })}
    </li>
  );
}
