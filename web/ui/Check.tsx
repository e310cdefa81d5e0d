import type { ReactNode } from 'react';
import css from './Check.module.css';

interface CheckProps {
  readonly label: ReactNode;
  readonly checked: boolean;
  readonly onChange: (checked: boolean) => void;
}

/** A plain box to tick. */
export function Check({ label, checked, onChange }: CheckProps) {
  return (
    <label className={css.check}>
      <input type="checkbox" checked={checked} onChange={(e) => onChange(e.target.checked)} />
      <span>{label}</span>
    </label>
  );
}
