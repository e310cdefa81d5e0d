import { useEffect, useState } from 'react';
import styles from './stage.module.css';

/** A quick answer needs no sign; one that takes longer than this does. */
const QUIET_MS = 250;

export function BusySign({ busy, words }: { busy: boolean; words: string }) {
  return <div role="status">{busy && <LateSign words={words} />}</div>;
}

function LateSign({ words }: { words: string }) {
  const [late, setLate] = useState(false);
  useEffect(() => {
    const timer = setTimeout(() => setLate(true), QUIET_MS);
    return () => clearTimeout(timer);
  }, []);
  return late && <p className={styles.busy}>{words}</p>;
}
