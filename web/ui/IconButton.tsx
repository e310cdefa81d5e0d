import type { ButtonHTMLAttributes } from 'react';
import { Button } from './Button.tsx';

interface IconButtonProps extends Omit<ButtonHTMLAttributes<HTMLButtonElement>, 'title' | 'aria-label'> {
  /** What it does: told to screen readers, and shown where a mouse rests on it. */
  readonly label: string;
}

/** A square button with a sign in place of words. */
export function IconButton({ label, ...rest }: IconButtonProps) {
  return <Button kind="icon" aria-label={label} title={label} {...rest} />;
}
