import { Canvas, type RootState } from '@react-three/fiber';
import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { useStore } from 'zustand';
import type { Design } from '../../../geometry/design/schema.ts';
import type { PlateResult } from '../../../geometry/plate/plate.ts';
import type { Theme } from '../painting/oak.ts';
import { oakTexture } from '../painting/textures.ts';
import { t } from '../../words/t.ts';
import { arrangeAll, arrangeOne } from './arrange.ts';
import { BarrelScene } from './BarrelScene.tsx';
import { BarrelTools } from './BarrelTools.tsx';
import css from './BarrelView.module.css';
import { EyeRig } from './EyeRig.tsx';
import { createEyeHolder } from './eye-holder.ts';
import { looks } from './looks-store.ts';
import { setView, type ViewName } from './set-views.ts';
import { sheetLook } from './sheet-look.ts';
import { takePicture } from './take-picture.ts';
import { useHand } from './use-hand.ts';

interface BarrelViewProps {
  readonly design: Design;
  readonly plate: PlateResult | undefined;
  /** All plates of the design made so far, in its order. */
  readonly plates: readonly PlateResult[];
  readonly state: 'plate' | 'paint' | 'char';
  readonly theme: Theme;
  /** What the picture shows, in words. */
  readonly label: string;
  /** The first picture has been drawn. */
  readonly onDrawn: () => void;
  /** The graphics card gave up. */
  readonly onLost: () => void;
  readonly onPicture: (png: Uint8Array<ArrayBuffer>) => void;
}

/** Sharper pictures than this cost a phone's card more than anyone sees. */
const MOST_RATIO = 2;

/** The barrel in three dimensions: drawn only when something changes, turned by hand, finger or keys. */
export function BarrelView(props: BarrelViewProps) {
  const { design, plate, plates, state, theme, onDrawn, onLost } = props;
  const { paint, together } = useStore(looks);
  const all = together && plates.length > 1;
  const arranged = useMemo(
    () => (all ? arrangeAll(design, plates) : arrangeOne(design, plate)),
    // Only what the scene is made of: a title typed moves nothing.
    // eslint-disable-next-line react-hooks/exhaustive-deps -- see above
    [all, design.head, design.surface, design.stock, plate, all && plates.map((p) => p.plateId + p.fingerprint).join()],
  );
  const frame = useRef<HTMLDivElement>(null);
  const three = useRef<RootState>(undefined);
  const [view, setName] = useState<ViewName>('quarter');
  const whole = setView('straight', arranged).reachMm;
  const eye = useMemo(() => createEyeHolder(setView('quarter', arranged)), []); // eslint-disable-line react-hooks/exhaustive-deps -- made once
  const outline = JSON.stringify(arranged.map((a) => [a.x, a.y, a.pose]));
  const hand = useHand(frame, eye, whole);

  // Another barrel is looked at afresh, from the view last asked for.
  const before = useRef(outline);
  useEffect(() => {
    if (before.current === outline) return;
    before.current = outline;
    eye.jump(setView(view, arranged));
  }, [outline, eye, view, arranged]);

  const drawn = useRef(false);
  const tell = useCallback(
    (shows: string, held: string) => {
      const element = frame.current;
      if (!element) return;
      element.dataset['shows'] = shows;
      element.dataset['held'] = held;
      if (drawn.current) return;
      drawn.current = true;
      onDrawn();
    },
    [onDrawn],
  );
  const created = useCallback(
    (root: RootState) => {
      three.current = root;
      root.gl.domElement.addEventListener('webglcontextlost', (event) => {
        event.preventDefault();
        onLost();
      });
    },
    [onLost],
  );
  const headMm = Math.max(...arranged.map((a) => Math.max(a.barrel.headAcrossMm, a.barrel.headAlongMm)));
  const oak = oakTexture(headMm, theme);
  const sheet = sheetLook(design.stock.material, theme);
  const cannot = arranged.some((a) => a.plate && !a.surface);
  const shows = [...arranged.map((a) => a.plate && `${a.plate.plateId}/${a.plate.fingerprint}`), state, paint].join(
    ' ',
  );

  async function save(): Promise<void> {
    const root = three.current;
    if (!root) return;
    props.onPicture(await takePicture(root.gl, root.scene, eye.get()));
    root.invalidate();
  }

  return (
    <div className={css.place}>
      <div
        ref={frame}
        className={css.frame}
        role="img"
        aria-label={props.label}
        aria-describedby="barrel-keys"
        tabIndex={0}
        data-barrel
        {...hand}
      >
        <Canvas
          flat
          shadows="percentage"
          frameloop="demand"
          dpr={Math.min(MOST_RATIO, devicePixelRatio)}
          gl={{ antialias: true, alpha: false }}
          onCreated={created}
        >
          <BarrelScene
            arranged={arranged}
            state={state}
            paint={paint}
            theme={theme}
            oak={oak}
            sheet={sheet}
            shows={shows}
            onDrawn={tell}
          />
          <EyeRig eye={eye} />
        </Canvas>
      </div>
      <p id="barrel-keys" className="sr-only">
        {t('cask.keys')}
      </p>
      <BarrelTools
        view={view}
        onView={(name) => {
          setName(name);
          eye.glide(setView(name, arranged));
        }}
        several={plates.length > 1}
        painted={state === 'paint'}
        onSave={() => void save()}
      />
      {cannot && (
        <p className={css.cannot} role="status">
          {t('barrel.gap.cannot')}
        </p>
      )}
    </div>
  );
}
