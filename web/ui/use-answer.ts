import { useEffect, useState } from 'react';

/**
 * The answer to a question, once it is there. The question is asked again when what it is about changes; an answer
 * that comes too late is passed over. undefined: nothing to ask, or no answer yet.
 */
export function useAnswer<A>(about: unknown, ask: () => Promise<A>): { readonly answer: A } | undefined {
  const [found, setFound] = useState<{ readonly about: unknown; readonly answer: A } | undefined>();
  useEffect(() => {
    if (about === undefined) return;
    let wanted = true;
    void ask().then((answer) => {
      if (wanted) setFound({ about, answer });
    });
    return () => {
      wanted = false;
    };
    // eslint-disable-next-line react-hooks/exhaustive-deps -- `about` says all that the question is made of
  }, [about]);
  return found !== undefined && found.about === about ? found : undefined;
}
