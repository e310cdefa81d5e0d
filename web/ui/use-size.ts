import { useEffect, useState, type RefObject } from 'react';
import type { SizePx } from './size.ts';

/** Inner size of an element in CSS pixels, kept up to date; nothing until it has been laid out. */
export function useSize(ref: RefObject<HTMLElement | null>): SizePx | undefined {
  const [size, setSize] = useState<SizePx>();
  useEffect(() => {
    const element = ref.current;
    if (!element) return;
    const observer = new ResizeObserver(() => {
      const width = element.clientWidth;
      const height = element.clientHeight;
      if (width < 1 || height < 1) return;
      setSize((old) => (old?.width === width && old.height === height ? old : { width, height }));
    });
    observer.observe(element);
    return () => observer.disconnect();
  }, [ref]);
  return size;
}
