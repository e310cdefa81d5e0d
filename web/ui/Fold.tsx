import { ChevronRight } from 'lucide-react';
import type { ReactNode } from 'react';
import css from './Fold.module.css';

interface FoldProps {
  readonly title: ReactNode;
  readonly children: ReactNode;
  readonly open?: boolean | undefined;
  readonly onToggle?: ((open: boolean) => void) | undefined;
}

/** Depth that is a fold away: closed until it is wanted. */
export function Fold({ title, children, open, onToggle }: FoldProps) {
  return (
    <details className={css.fold} open={open} onToggle={(e) => onToggle?.(e.currentTarget.open)}>
      <summary className={css.summary}>
        <ChevronRight className={css.mark} size={16} aria-hidden />
        {title}
      </summary>
      <div className={css.body}>{children}</div>
    </details>
  );
}
