import { useEffect, useRef, useState } from 'react';
import { showFace } from './show-face.ts';
import css from './FaceSample.module.css';

interface FaceSampleProps {
  readonly id: string;
  /** Catalogue id, or the base64 data of a font of one's own. */
  readonly source: string;
  readonly text: string;
}

/** Words in a face, fetched only when the sample comes near the screen. */
export function FaceSample({ id, source, text }: FaceSampleProps) {
  const line = useRef<HTMLSpanElement>(null);
  const [family, setFamily] = useState<string | undefined>();

  useEffect(() => {
    const element = line.current;
    if (element === null) return;
    let gone = false;
    const watch = new IntersectionObserver(
      (entries) => {
        if (!entries.some((e) => e.isIntersecting)) return;
        watch.disconnect();
        void showFace(id, source).then((shown) => {
          if (!gone) setFamily(shown);
        });
      },
      { rootMargin: '400px' },
    );
    watch.observe(element);
    return () => {
      gone = true;
      watch.disconnect();
    };
  }, [id, source]);

  return (
    <span
      ref={line}
      className={css.sample}
      data-ready={family !== undefined || undefined}
      style={{ fontFamily: family }}
      aria-hidden
    >
      {text}
    </span>
  );
}
