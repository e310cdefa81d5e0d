/** What a key does to the chosen bridge. Pure. */
export type BridgeCommand =
  | { readonly kind: 'nudge'; readonly right: number; readonly up: number }
  | { readonly kind: 'turn'; readonly deg: number }
  | { readonly kind: 'widen'; readonly quarters: number }
  | { readonly kind: 'remove' }
  | { readonly kind: 'leave' };

const STEP_MM = 0.5;
const LONG_STEP_MM = 2;
const TURN_DEG = 5;

/** Arrows move by half a millimetre, with Shift by two; brackets turn; plus and minus widen; Delete removes. */
export function bridgeCommand(key: string, shift: boolean): BridgeCommand | undefined {
  const mm = shift ? LONG_STEP_MM : STEP_MM;
  switch (key) {
    case 'ArrowLeft':
      return { kind: 'nudge', right: -mm, up: 0 };
    case 'ArrowRight':
      return { kind: 'nudge', right: mm, up: 0 };
    case 'ArrowUp':
      return { kind: 'nudge', right: 0, up: mm };
    case 'ArrowDown':
      return { kind: 'nudge', right: 0, up: -mm };
    case '[':
      return { kind: 'turn', deg: -TURN_DEG };
    case ']':
      return { kind: 'turn', deg: TURN_DEG };
    case '+':
    case '=':
      return { kind: 'widen', quarters: 1 };
    case '-':
      return { kind: 'widen', quarters: -1 };
    case 'Delete':
    case 'Backspace':
      return { kind: 'remove' };
    case 'Escape':
      return { kind: 'leave' };
    default:
      return undefined;
  }
}
