import { useEffect, useState } from 'react';
import { later } from '../../ui/later.tsx';
import { t, withWords } from '../../words/t.ts';
import { FirstPlate } from './FirstPlate.tsx';
import { useCurrentPlate, usePlates } from '../../page/page-context.ts';

const StageArea = later(async () => (await withWords(import('./StageArea.tsx'), 'work')).StageArea);

/** A plate that does not come in this time must not keep the stage away. */
const LONGEST_WAIT_MS = 20_000;

/** Once it has been drawn, the plain picture is no longer needed in this visit. */
let drawnBefore = false;

/** The stage with all that works on it is large to load: it comes once the plate is in sight. */
export function StageLater() {
  const { plate } = useCurrentPlate();
  const trouble = usePlates((s) => s.trouble ?? s.halt);
  const halted = usePlates((s) => s.halt !== undefined && !s.busy);
  const [drawn, setDrawn] = useState(drawnBefore);
  useEffect(() => {
    drawnBefore = drawn;
    if (drawn) return;
    const timer = setTimeout(() => setDrawn(true), LONGEST_WAIT_MS);
    return () => clearTimeout(timer);
  }, [drawn]);
  const picture = (
    <FirstPlate
      plate={plate}
      waiting={trouble === undefined ? t('stage.loading') : ''}
      onDrawn={() => setDrawn(true)}
    />
  );
  return drawn || halted ? <StageArea waiting={picture} /> : picture;
}
