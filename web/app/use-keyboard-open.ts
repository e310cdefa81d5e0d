import { useEffect } from 'react';

/** A keyboard on the screen takes at least so much of its height (common practice, no source). */
const LEAST_SHARE = 0.2;

const FIELDS = 'textarea, input:not([type=radio], [type=checkbox], [type=range], [type=color], [type=file])';

/**
 * Says on the root element that a screen's own keyboard is open while a field is typed into: `data-keyboard`, and how
 * much is left to see as `--seen` and `--seen-top`. Some browsers make the page lower for it, some lay it over the page
 * (CSSOM View, VisualViewport).
 */
export function useKeyboardOpen(): void {
  useEffect(() => {
    const seen = window.visualViewport;
    if (!seen) return;
    const root = document.documentElement;
    const tallest = new Map<number, number>();
    const look = (): void => {
      const width = window.innerWidth;
      const whole = Math.max(tallest.get(width) ?? 0, seen.height * seen.scale, window.innerHeight);
      tallest.set(width, whole);
      const field = document.activeElement;
      const typing = field !== null && field.matches(FIELDS) && field.closest('main') !== null;
      const open = typing && seen.height * seen.scale < whole * (1 - LEAST_SHARE);
      const before = root.hasAttribute('data-keyboard');
      root.toggleAttribute('data-keyboard', open);
      root.style.setProperty('--seen', `${seen.height}px`);
      root.style.setProperty('--seen-top', `${seen.offsetTop}px`);
      if (open && !before) requestAnimationFrame(() => field.scrollIntoView({ block: 'center' }));
    };
    const soon = (): void => void requestAnimationFrame(look);
    look();
    seen.addEventListener('resize', look);
    seen.addEventListener('scroll', look);
    document.addEventListener('focusin', soon);
    document.addEventListener('focusout', soon);
    return () => {
      seen.removeEventListener('resize', look);
      seen.removeEventListener('scroll', look);
      document.removeEventListener('focusin', soon);
      document.removeEventListener('focusout', soon);
      root.removeAttribute('data-keyboard');
    };
  }, []);
}
