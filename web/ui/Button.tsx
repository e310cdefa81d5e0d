import type { ButtonHTMLAttributes } from 'react';
import css from './Button.module.css';

interface ButtonProps extends ButtonHTMLAttributes<HTMLButtonElement> {
  /** next: the one next thing. plain: outlined. quiet: words only. icon: a square for a sign. */
  readonly kind: 'next' | 'plain' | 'quiet' | 'icon';
}

export function Button({ kind, className, ...rest }: ButtonProps) {
  return <button type="button" {...rest} className={[css.button, css[kind], className].filter(Boolean).join(' ')} />;
}
