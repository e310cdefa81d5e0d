import { useEffect, useMemo } from 'react';

/** What the graphics card holds for us, made anew when one of the keys changes; the old is let go at once. */
export function useOwn<T extends { dispose(): void }>(make: () => T, keys: readonly unknown[]): T {
  // eslint-disable-next-line react-hooks/exhaustive-deps, react-hooks/use-memo -- the keys say all that it is made of
  const own = useMemo(make, keys);
  useEffect(() => () => own.dispose(), [own]);
  return own;
}
