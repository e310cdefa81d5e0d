import { useEffect, useState } from 'react';

const BEAT_MS = 900;
const BEATS = 3;

/** 0 to 1 and back, three times after the key changes, then at rest at 1; at rest at once where motion is unwelcome. */
export function usePulse(key: object | undefined): number {
  const [beating, setBeating] = useState<{ key: object; strength: number }>();
  useEffect(() => {
    if (key === undefined || window.matchMedia('(prefers-reduced-motion: reduce)').matches) return;
    let frame = 0;
    const start = performance.now();
    const beat = (now: number) => {
      const past = Math.max(0, now - start) / BEAT_MS;
      if (past >= BEATS) {
        setBeating(undefined);
        return;
      }
      setBeating({ key, strength: 0.5 + 0.5 * Math.cos(past * Math.PI * 2) });
      frame = requestAnimationFrame(beat);
    };
    frame = requestAnimationFrame(beat);
    return () => cancelAnimationFrame(frame);
  }, [key]);
  return beating !== undefined && beating.key === key ? beating.strength : 1;
}
