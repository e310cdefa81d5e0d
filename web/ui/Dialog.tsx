import { X } from 'lucide-react';
import { useId, type ReactNode } from 'react';
import css from './Dialog.module.css';
import { IconButton } from './IconButton.tsx';
import { Modal } from './Modal.tsx';

interface DialogProps {
  readonly title: string;
  /** What the button that closes it is called. */
  readonly closeLabel: string;
  readonly onClose: () => void;
  readonly children: ReactNode;
}

/** A wide dialog with its title and a way out at the top. */
export function Dialog({ title, closeLabel, onClose, children }: DialogProps) {
  const id = useId();
  return (
    <Modal wide labelledBy={id} onCancel={onClose}>
      <div className={css.inside}>
        <div className={css.head}>
          <h2 id={id} className={css.title}>
            {title}
          </h2>
          <IconButton label={closeLabel} onClick={onClose} sign={X} size={20} />
        </div>
        {children}
      </div>
    </Modal>
  );
}
