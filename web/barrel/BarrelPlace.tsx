import { Component, lazy, Suspense, useState, type ComponentProps, type ReactNode } from 'react';
import { useStore } from 'zustand';
import { looks } from './solid/looks-store.ts';
import type { BarrelView } from './solid/BarrelView.tsx';
import { t } from '../words/t.ts';
import css from './BarrelPlace.module.css';
import { BarrelEnd } from './flat/BarrelEnd.tsx';
import { hasWebGl } from './has-web-gl.ts';

const Barrel = lazy(async () => ({ default: (await import('./solid/BarrelView.tsx')).BarrelView }));

interface BarrelPlaceProps extends Omit<ComponentProps<typeof BarrelView>, 'onDrawn' | 'onLost'> {
  /** Visible head in mm, along the grain of its boards (drawn upright) and across it. */
  readonly head: { readonly alongMm: number; readonly acrossMm: number };
}

/** The barrel: flat at first and where nothing else can be had, in three dimensions as soon as that has been drawn. */
export function BarrelPlace({ head, ...barrel }: BarrelPlaceProps) {
  const [able, setAble] = useState(hasWebGl);
  const [drawn, setDrawn] = useState(false);
  const paint = useStore(looks, (s) => s.paint);
  const flat = !able || !drawn;
  const give = () => setAble(false);
  return (
    <div className={css.place}>
      {flat && (
        <BarrelEnd
          plate={barrel.plate}
          head={head}
          state={barrel.state}
          paint={paint}
          theme={barrel.theme}
          aria-label={barrel.label}
        />
      )}
      {able && (
        <div className={css.barrel} data-drawn={drawn || undefined}>
          <Fallible onFailed={give}>
            <Suspense fallback={null}>
              <Barrel {...barrel} onDrawn={() => setDrawn(true)} onLost={give} />
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
