import type { LucideIcon } from 'lucide-react';
import type { ButtonHTMLAttributes } from 'react';
import { Button } from './Button.tsx';

interface IconButtonProps extends Omit<ButtonHTMLAttributes<HTMLButtonElement>, 'aria-label'> {
  /** What it does: told to screen readers, and shown where a mouse rests on it unless `title` says it shorter. */
  readonly label: string;
  /** Its face; children stand after it. */
  readonly sign?: LucideIcon;
  /** Size of the sign, CSS pixels. */
  readonly size?: number;
}

/** A square button with a sign in place of words. */
export function IconButton({ label, sign: Sign, size = 18, children, ...rest }: IconButtonProps) {
  return (
    <Button kind="icon" aria-label={label} title={label} {...rest}>
      {Sign && <Sign size={size} aria-hidden />}
      {children}
    </Button>
  );
}
