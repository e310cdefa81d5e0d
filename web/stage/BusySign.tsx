import { useEffect, useState } from 'react';
import styles from './stage.module.css';

/** A quick answer needs no sign; one that takes longer than this does. */
const QUIET_MS = 250;

export function BusySign({ busy, words }: { busy: boolean; words: string }) {
  const [shown, setShown] = useState(false);
  useEffect(() => {
    if (!busy) {
      setShown(false);
      return;
    }
    const timer = setTimeout(() => setShown(true), QUIET_MS);
    return () => clearTimeout(timer);
  }, [busy]);
  return (
    <p className={styles.busy} role="status" data-shown={shown}>
      {shown ? words : ''}
    </p>
  );
}
