import { lazy, Suspense, useEffect, useState, type ComponentType, type ReactNode } from 'react';
import { t } from '../words/t.ts';
import { Boundary } from './Boundary.tsx';
import css from './Failed.module.css';
import { Failed } from './Failed.tsx';

/** What is said of a part that comes later, besides its own properties. */
interface LaterProps {
  /** Shown until it is there. */
  readonly waiting?: ReactNode;
  /** Given for what lies over the page: closes it where it cannot be had. */
  readonly onGiveUp?: () => void;
}

/** A part that has not come by then is not waited for in silence. */
const LONGEST_WAIT_MS = 8000;

/**
 * A part of the page that is loaded when it is first shown. Where it cannot be had, does not come, or breaks while it
 * is drawn, the rest of the page stays and a card offers to load it again: first that part alone, then, where the server
 * no longer has it, the page.
 */
export function later<Props extends object>(
  load: () => Promise<ComponentType<Props>>,
): ComponentType<Props & LaterProps> {
  const begin = () => lazy(async () => ({ default: await load() }));
  let Part = begin();
  return function Later({ waiting, onGiveUp, ...rest }: Props & LaterProps) {
    const [tries, setTries] = useState(0);
    const again = (): void => {
      load().then(
        () => {
          Part = begin();
          setTries((n) => n + 1);
        },
        () => location.reload(),
      );
    };
    return (
      <Boundary key={tries} onAgain={again} onClose={onGiveUp}>
        <Suspense fallback={<Waiting shown={waiting} onGiveUp={onGiveUp} />}>
          <Part {...(rest as unknown as Props)} />
        </Suspense>
      </Boundary>
    );
  };
}

function Waiting({ shown, onGiveUp }: { readonly shown: ReactNode; readonly onGiveUp: (() => void) | undefined }) {
  const [long, setLong] = useState(false);
  useEffect(() => {
    const timer = setTimeout(() => setLong(true), LONGEST_WAIT_MS);
    return () => clearTimeout(timer);
  }, []);
  if (!long) return shown;
  // what was asked for once is not asked for again by the same page: only a fresh one helps
  return <Failed how="slow" onAgain={() => location.reload()} onClose={onGiveUp} />;
}

/** A whole page on its way. */
export function Coming() {
  return (
    <p className={css.coming} role="status">
      {t('page.pages.loading')}
    </p>
  );
}
