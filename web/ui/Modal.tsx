import { useEffect, useRef, type ReactNode } from 'react';
import css from './Modal.module.css';

interface ModalProps {
  readonly labelledBy: string;
  /** Escape was pressed. */
  readonly onCancel: () => void;
  readonly wide?: boolean;
  readonly children: ReactNode;
}

/** The browser's own dialog: keeps the focus inside, gives it back afterwards, and leaves by Escape. */
export function Modal({ labelledBy, onCancel, wide = false, children }: ModalProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    const shown = dialog.current;
    shown?.showModal();
    return () => shown?.close();
  }, []);
  return (
    <dialog
      ref={dialog}
      aria-labelledby={labelledBy}
      className={wide ? css.wide : css.modal}
      onCancel={(e) => {
        e.preventDefault();
        onCancel();
      }}
    >
      {children}
    </dialog>
  );
}
