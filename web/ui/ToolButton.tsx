import type { LucideIcon } from 'lucide-react';
import css from './ToolButton.module.css';

interface ToolButtonProps {
  readonly name: string;
  /** What stands under the sign. */
  readonly short?: string;
  readonly sign: LucideIcon;
  readonly off?: boolean;
  readonly pressed?: boolean;
  readonly onPress: () => void;
}

/** One of a row of tools: it keeps its place and its focus when it has nothing to do. */
export function ToolButton({ name, short, sign: Sign, off = false, pressed, onPress }: ToolButtonProps) {
  return (
    <button
      type="button"
      className={css.tool}
      aria-label={name}
      title={name}
      aria-disabled={off || undefined}
      aria-pressed={pressed}
      onClick={off ? undefined : onPress}
    >
      <Sign size={18} aria-hidden />
      {short !== undefined && <span className={css.short}>{short}</span>}
    </button>
  );
}
