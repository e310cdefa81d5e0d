/** What a key does to the chosen elements. Pure. */
export type PlacingCommand =
  /** Steps right and up: millimetres, or along the ring degrees. */
  | { readonly kind: 'nudge'; readonly right: number; readonly up: number }
  | { readonly kind: 'turn'; readonly deg: number }
  /** So many twentieths larger, or smaller below 0. */
  | { readonly kind: 'size'; readonly steps: number }
  | { readonly kind: 'remove' }
  | { readonly kind: 'duplicate' }
  | { readonly kind: 'all' }
  | { readonly kind: 'type' }
  | { readonly kind: 'leave' };

export interface Key {
  readonly key: string;
  readonly shiftKey: boolean;
  readonly altKey: boolean;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
}

const STEP = 1;
const FINE_STEP = 0.1;
const TURN_DEG = 5;
const FINE_TURN_DEG = 1;

/**
 * Arrows move by a millimetre (along a ring by a degree), with Shift by a tenth; brackets, or Alt with an arrow to the
 * side, turn; Alt with plus or minus resizes; Delete removes, Ctrl or Cmd with D duplicates and with A chooses all.
 */
export function placingCommand({ key, shiftKey, altKey, ctrlKey, metaKey }: Key): PlacingCommand | undefined {
  if (ctrlKey || metaKey) {
    if (altKey || shiftKey) return undefined;
    const letter = key.toLowerCase();
    return letter === 'd' ? { kind: 'duplicate' } : letter === 'a' ? { kind: 'all' } : undefined;
  }
  if (altKey) {
    if (key === 'ArrowLeft') return { kind: 'turn', deg: shiftKey ? -FINE_TURN_DEG : -TURN_DEG };
    if (key === 'ArrowRight') return { kind: 'turn', deg: shiftKey ? FINE_TURN_DEG : TURN_DEG };
    if (key === '+' || key === '=' || key === 'ArrowUp') return { kind: 'size', steps: 1 };
    if (key === '-' || key === 'ArrowDown') return { kind: 'size', steps: -1 };
    return undefined;
  }
  const by = shiftKey ? FINE_STEP : STEP;
  switch (key) {
    case 'ArrowLeft':
      return { kind: 'nudge', right: -by, up: 0 };
    case 'ArrowRight':
      return { kind: 'nudge', right: by, up: 0 };
    case 'ArrowUp':
      return { kind: 'nudge', right: 0, up: by };
    case 'ArrowDown':
      return { kind: 'nudge', right: 0, up: -by };
    case '[':
      return { kind: 'turn', deg: -TURN_DEG };
    case ']':
      return { kind: 'turn', deg: TURN_DEG };
    // Shift with a bracket, on keyboards that have them so.
    case '{':
      return { kind: 'turn', deg: -FINE_TURN_DEG };
    case '}':
      return { kind: 'turn', deg: FINE_TURN_DEG };
    case 'Delete':
    case 'Backspace':
      return { kind: 'remove' };
    case 'Enter':
      return { kind: 'type' };
    case 'Escape':
      return { kind: 'leave' };
    default:
      return undefined;
  }
}

/** Where Tab goes from one element to the next: undefined past either end, so that it leaves the stage. */
export function walkTo(ids: readonly string[], from: string | undefined, back: boolean): string | undefined {
  const at = from === undefined ? -1 : ids.indexOf(from);
  if (back) return at > 0 ? ids[at - 1] : undefined;
  return ids[at + 1];
}
