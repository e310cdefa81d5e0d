import { Component, lazy, Suspense, useMemo, useState, type ComponentProps, type ReactNode } from 'react';
import { useStore } from 'zustand';
import { printInName } from '../../geometry/design/show-fingerprint.ts';
import { drawBarrel } from '../../geometry/proof/barrel-picture.ts';
import { regionsPath } from '../../geometry/proof/picture-path.ts';
import { looks } from './solid/looks-store.ts';
import type { BarrelView } from './solid/BarrelView.tsx';
import { usePage } from '../page/page-context.ts';
import { saveFile } from '../page/save-file.ts';
import { useTheme } from '../page/use-theme.ts';
import { fileStem } from '../worker/file-stem.ts';
import { t } from '../words/t.ts';
import css from './BarrelPlace.module.css';
import { BarrelDrawing } from './BarrelDrawing.tsx';
import { hasWebGl } from './has-web-gl.ts';

const Barrel = lazy(async () => ({ default: (await import('./solid/BarrelView.tsx')).BarrelView }));

type ViewProps = ComponentProps<typeof BarrelView>;

interface BarrelPlaceProps extends Pick<ViewProps, 'design' | 'plate' | 'plates' | 'state'> {
  /** What the plate is called. */
  readonly name: string;
}

/** The barrel: flat at first and where nothing else can be had, in three dimensions as soon as that has been drawn. */
export function BarrelPlace({ name, ...shown }: BarrelPlaceProps) {
  const { design, plate, state } = shown;
  const { ui } = usePage();
  const theme = useTheme();
  const label = t('cask.label', { name, state: t(`page.barrelStates.${state}`) });
  const [able, setAble] = useState(hasWebGl);
  const [drawn, setDrawn] = useState(false);
  const paint = useStore(looks, (s) => s.paint);
  const flat = !able || !drawn;
  const give = () => setAble(false);
  const savePicture = (png: Uint8Array<ArrayBuffer>): void => {
    const file = `${fileStem(design.title)}-${printInName(plate?.fingerprint ?? 'plain')}-barrel.png`;
    saveFile({ name: file, type: 'image/png', bytes: png });
    ui.getState().set({ notice: t('cask.saved', { name: file }) });
  };
  return (
    <div className={css.place}>
      {flat && <Flat {...shown} paint={paint} label={label} />}
      {able && (
        <div className={css.barrel} data-drawn={drawn || undefined}>
          <Fallible onFailed={give}>
            <Suspense fallback={null}>
              <Barrel
                {...shown}
                theme={theme}
                label={label}
                onDrawn={() => setDrawn(true)}
                onLost={give}
                onPicture={savePicture}
              />
            </Suspense>
          </Fallible>
        </div>
      )}
      {!able && (
        <p className={css.note} role="status">
          {t('cask.flat')}
        </p>
      )}
    </div>
  );
}

interface FlatProps extends Pick<ViewProps, 'design' | 'plate' | 'state' | 'label'> {
  readonly paint: string;
}

function Flat({ design, plate, state, paint, label }: FlatProps) {
  const picture = useMemo(
    () =>
      drawBarrel(design, {
        openings: regionsPath(plate?.openings.map((o) => o.region) ?? []),
        diameterMm: plate?.diameterMm ?? 0,
        state,
        ...(state === 'paint' && { paint }),
      }),
    [design, plate, state, paint],
  );
  return <BarrelDrawing picture={picture} className={css.flat} label={label} />;
}

/** Whatever goes wrong in the view, the flat drawing stays. */
class Fallible extends Component<{ readonly onFailed: () => void; readonly children: ReactNode }, { failed: boolean }> {
  override state = { failed: false };
  static getDerivedStateFromError(): { failed: boolean } {
    return { failed: true };
  }
  override componentDidCatch(): void {
    this.props.onFailed();
  }
  override render(): ReactNode {
    return this.state.failed ? null : this.props.children;
  }
}
