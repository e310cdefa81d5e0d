import { useEffect, useState, type RefObject } from 'react';
import type { Size } from './sheet-view.ts';

/** The size of an element, in pixels of the page, as it changes. */
export function useSize(of: RefObject<HTMLElement | null>): Size {
  const [size, setSize] = useState<Size>({ width: 0, height: 0 });
  useEffect(() => {
    const element = of.current;
    if (!element) return;
    const watcher = new ResizeObserver(([entry]) => {
      if (entry) setSize({ width: entry.contentRect.width, height: entry.contentRect.height });
    });
    watcher.observe(element);
    return () => watcher.disconnect();
  }, [of]);
  return size;
}
