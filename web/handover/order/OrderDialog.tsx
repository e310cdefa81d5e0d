import { useEffect, useState } from 'react';
import { MOST_ORDER_BYTES } from '../../../geometry/order-file/order-file.ts';
import { beginWith } from '../../state/actions/begin-with.ts';
import { type Page, usePage } from '../../page/page-context.ts';
import type { Design } from '../../../geometry/design/schema.ts';
import { Dialog } from '../../ui/Dialog.tsx';
import { t } from '../../words/t.ts';
import type { OpenedOrder, Progress } from '../../worker/plate-api.ts';
import { onlyToLookAt } from './only-to-look-at.ts';
import text from '../../ui/text.module.css';
import css from './OrderDialog.module.css';
import { closeOrder } from './order-store.ts';
import { SoundOrderPart } from './SoundOrderPart.tsx';
import { UnsoundOrderPart } from './UnsoundOrderPart.tsx';

/** An order that came as one file: looked over, then opened, or told what is wrong with it. */
export function OrderDialog({ file }: { readonly file: File }) {
  const page = usePage();
  const [opened, setOpened] = useState<OpenedOrder | undefined>();
  const [progress, setProgress] = useState<Progress | undefined>();

  useEffect(() => {
    let gone = false;
    const told = (next: Progress): void => {
      if (!gone) setProgress(next);
    };
    async function check(): Promise<void> {
      const order = await readUpTo(file, MOST_ORDER_BYTES).then(
        (bytes) => page.client.openOrder(bytes, told),
        () => ({ problem: 'trouble.unreadable' as const }),
      );
      if (gone) return;
      if ('kind' in order && order.kind === 'sound') openAs(page, order.design);
      setOpened(order);
    }
    void check();
    return () => {
      gone = true;
    };
  }, [file, page]);

  function look(design: Design): void {
    openAs(page, onlyToLookAt(design));
    page.ui.getState().set({ page: 'design', notice: t('handOver.looked') });
    closeOrder();
  }

  return (
    <Dialog title={t('handOver.title')} closeLabel={t('handOver.close')} onClose={closeOrder}>
      <p className={text.note}>{file.name}</p>
      <p role="status" className={css.busy}>
        {opened === undefined && checkingWords(progress)}
      </p>
      {opened !== undefined && <Told opened={opened} onLook={look} />}
    </Dialog>
  );
}

/** As one more of the own designs. */
function openAs({ own, ui }: Page, design: Design): void {
  own.begin((before) => beginWith(before, design));
  ui.getState().set({
    selectedId: undefined,
    litFinding: undefined,
    plateId: undefined,
    begin: undefined,
    notice: undefined,
  });
}

function Told({ opened, onLook }: { readonly opened: OpenedOrder; readonly onLook: (design: Design) => void }) {
  if ('problem' in opened) {
    return (
      <div role="alert" className={css.unsound}>
        <h3>{t('handOver.notChecked')}</h3>
        <p>{t(opened.problem)}</p>
      </div>
    );
  }
  if (opened.kind === 'sound') return <SoundOrderPart order={opened} />;
  return <UnsoundOrderPart order={opened} onLook={onLook} />;
}

function checkingWords(progress: Progress | undefined): string {
  if (!progress) return t('handOver.checking');
  return t('handOver.making', { number: progress.done + 1, of: progress.of });
}

/** One byte more than an order may have is enough to tell that it is none. */
async function readUpTo(file: File, most: number): Promise<Uint8Array> {
  return new Uint8Array(await file.slice(0, most + 1).arrayBuffer());
}
