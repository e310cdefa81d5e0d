import { useEffect } from 'react';
import { useStore } from 'zustand';
import { later } from '../../ui/later.tsx';
import { withWords } from '../../words/t.ts';
import { closeOrder, isOrderFile, lookAtOrder, orderLookedAt } from './order-store.ts';

const OrderDialog = later(async () => (await withWords(import('./OrderDialog.tsx'), 'work')).OrderDialog);

/** Where an order in one file is looked over; loaded when one is given. */
export function OrderPlace() {
  useDroppedOrder();
  const file = useStore(orderLookedAt, (s) => s.file);
  return file && <OrderDialog key={`${file.name}${file.lastModified}${file.size}`} file={file} onGiveUp={closeOrder} />;
}

/** An order dropped anywhere, on either page; before others on the page take the file for a drawing. */
function useDroppedOrder(): void {
  useEffect(() => {
    const drop = (e: DragEvent): void => {
      const file = e.dataTransfer?.files[0];
      if (file === undefined || !isOrderFile(file)) return;
      e.preventDefault();
      lookAtOrder(file);
    };
    addEventListener('drop', drop, true);
    return () => removeEventListener('drop', drop, true);
  }, []);
}
