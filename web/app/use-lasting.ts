import { useEffect, useState } from 'react';

/** True once something has been true without a break for so long; false as soon as it is not. */
export function useLasting(now: boolean, forMs: number): boolean {
  const [lasting, setLasting] = useState(false);
  useEffect(() => {
    if (!now) return;
    const timer = setTimeout(() => setLasting(true), forMs);
    return () => {
      clearTimeout(timer);
      setLasting(false);
    };
  }, [now, forMs]);
  return now && lasting;
}
