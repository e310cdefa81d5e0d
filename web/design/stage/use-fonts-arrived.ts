import { useEffect, useState } from 'react';

/** Draws the canvas again once the page's faces are there: unlike HTML it would keep the stand-in face. */
export function useFontsArrived(): void {
  const [, setArrived] = useState(false);
  useEffect(() => {
    let gone = false;
    void document.fonts.ready.then(() => {
      if (!gone) setArrived(true);
    });
    return () => {
      gone = true;
    };
  }, []);
}
