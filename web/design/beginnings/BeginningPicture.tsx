import { useEffect, useRef, useState } from 'react';
import type { Design } from '../../../geometry/design/schema.ts';
import { pictureOf, pictureWhenIdle } from './beginning-pictures.ts';
import { usePage } from '../../page/page-context.ts';
import css from './Beginnings.module.css';

/** A plate in its chime, small; made once it comes near the screen and the page's own plate is done. */
export function BeginningPicture({ design }: { readonly design: Design }) {
  const { client } = usePage();
  const place = useRef<HTMLSpanElement>(null);
  const [path, setPath] = useState(() => pictureOf(design));

  useEffect(() => {
    const element = place.current;
    if (path !== undefined || element === null) return;
    let gone = false;
    const watch = new IntersectionObserver(
      (entries) => {
        if (!entries.some((e) => e.isIntersecting)) return;
        watch.disconnect();
        void pictureWhenIdle(client, design, () => gone).then((made) => {
          if (!gone) setPath(made);
        });
      },
      { rootMargin: '200px' },
    );
    watch.observe(element);
    return () => {
      gone = true;
      watch.disconnect();
    };
  }, [client, design, path]);

  return (
    <span ref={place} className={css.chime}>
      <svg viewBox="-100 -100 200 200" className={css.plate} aria-hidden focusable="false">
        <circle r="100" className={css.metal} />
        {path !== undefined && <path d={path} fillRule="evenodd" className={css.cut} />}
      </svg>
    </span>
  );
}
