import type { ReactNode } from 'react';
import css from './Steps.module.css';

interface StepsProps<T extends string> {
  readonly label: string;
  readonly steps: readonly { readonly value: T; readonly face: ReactNode; readonly label?: string }[];
  readonly now: T;
  readonly onGo: (to: T) => void;
  /** As wide as their words; otherwise they share the width. */
  readonly narrow?: boolean;
  readonly className?: string | undefined;
}

/** Parts of a page one can go to at any time; on a phone they share its width. */
export function Steps<T extends string>({ label, steps, now, onGo, narrow, className }: StepsProps<T>) {
  return (
    <nav aria-label={label} className={[css.nav, className].filter(Boolean).join(' ')} data-narrow={narrow}>
      <ol>
        {steps.map(({ value, face, label: name }) => (
          <li key={value}>
            <button
              type="button"
              aria-current={value === now ? 'step' : undefined}
              aria-label={name}
              onClick={() => onGo(value)}
            >
              {face}
            </button>
          </li>
        ))}
      </ol>
    </nav>
  );
}
