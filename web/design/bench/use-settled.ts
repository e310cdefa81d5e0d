import { useEffect, useState } from 'react';

/** A value once it has stayed the same for so long; what was there before until then. undefined means: not yet. */
export function useSettled(value: string | undefined, pauseMs: number): string | undefined {
  const [settled, setSettled] = useState(value);
  useEffect(() => {
    if (value === undefined || value === settled) return;
    const timer = setTimeout(() => setSettled(value), pauseMs);
    return () => clearTimeout(timer);
  }, [value, settled, pauseMs]);
  return settled;
}
