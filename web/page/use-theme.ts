import { useEffect, useSyncExternalStore } from 'react';
import { useUi } from './page-context.ts';

const night = matchMedia('(prefers-color-scheme: dark)');

function watch(tell: () => void): () => void {
  night.addEventListener('change', tell);
  return () => night.removeEventListener('change', tell);
}

/** Day or night as the person, or else the device, wants it. */
export function useTheme(): 'light' | 'dark' {
  const choice = useUi((s) => s.theme);
  const dark = useSyncExternalStore(watch, () => night.matches);
  return choice === 'auto' ? (dark ? 'dark' : 'light') : choice;
}

/** Puts the light on the document, where the colours hang. */
export function useThemeOnDocument(): void {
  const theme = useTheme();
  useEffect(() => {
    document.documentElement.dataset['theme'] = theme;
    const ground = getComputedStyle(document.documentElement).getPropertyValue('--paper').trim();
    document.querySelector('meta[name="theme-color"]')?.setAttribute('content', ground);
  }, [theme]);
}
