import { useEffect, useId, useRef, useState, type ReactNode } from 'react';
import { Button } from './Button.tsx';
import css from './Drop.module.css';

interface DropProps {
  /** What the button is called when its face is only a sign. */
  readonly label?: string | undefined;
  readonly face: ReactNode;
  readonly id?: string | undefined;
  /** Which edges of button and panel lie above each other. */
  readonly side: 'left' | 'right';
  /** A press inside is a choice made, and closes it. */
  readonly choosing?: boolean | undefined;
  readonly children: ReactNode;
}

/** A button and what drops down from it; closed by Escape, and by going elsewhere with finger, mouse or keys. */
export function Drop({ label, face, id, side, choosing, children }: DropProps) {
  const panel = useId();
  const place = useRef<HTMLDivElement>(null);
  const [open, setOpen] = useState(false);

  useEffect(() => {
    if (!open) return;
    const leave = (event: Event): void => {
      if (event.target instanceof Node && place.current?.contains(event.target) !== true) setOpen(false);
    };
    document.addEventListener('pointerdown', leave);
    document.addEventListener('focusin', leave);
    return () => {
      document.removeEventListener('pointerdown', leave);
      document.removeEventListener('focusin', leave);
    };
  }, [open]);

  function close(): void {
    setOpen(false);
    place.current?.querySelector('button')?.focus();
  }

  return (
    <div
      ref={place}
      className={css.place}
      onKeyDown={(event) => {
        if (event.key !== 'Escape' || !open) return;
        event.stopPropagation();
        close();
      }}
    >
      <Button
        kind="icon"
        id={id}
        className={css.button}
        aria-label={label}
        title={label}
        aria-expanded={open}
        aria-controls={open ? panel : undefined}
        onClick={() => setOpen(!open)}
      >
        {face}
      </Button>
      {open && (
        <div id={panel} className={css.panel} data-side={side} onClick={choosing === true ? close : undefined}>
          {children}
        </div>
      )}
    </div>
  );
}
