import type { ReactNode } from 'react';
import css from './folds.module.css';
import { useCut, useCutParts } from '../state/cut-context.ts';

interface PressRowProps {
  /** The pass that is pointed out on the sheet while the row is pressed. */
  readonly pass: string;
  /** Opens what stands below the row, too. */
  readonly opens?: boolean;
  readonly children: ReactNode;
}

/** A row of a list that points out where it is on the sheet. */
export function PressRow({ pass, opens = false, children }: PressRowProps) {
  const { store } = useCutParts();
  const isLit = useCut((s) => s.lit === pass);
  return (
    <button
      type="button"
      className={css.press}
      {...(opens ? { 'aria-expanded': isLit } : { 'aria-pressed': isLit })}
      onClick={() => store.getState().set({ lit: isLit ? undefined : pass })}
    >
      {children}
    </button>
  );
}
