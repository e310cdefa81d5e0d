import { memo } from 'react';
import { ScreenShape } from './canvas/ScreenShape.tsx';
import { showPainted } from './scene.ts';
import type { Scene } from './use-scene.ts';

/** Wood, chime and plate: nothing but one or two bitmaps, so that zooming and panning cost next to nothing. */
export const Picture = memo(function Picture({ scene }: { readonly scene: Scene }) {
  return (
    <ScreenShape
      paint={(ctx, { view }) => {
        if (scene.whole) showPainted(ctx, scene.whole, view);
        const sharper = view.scale > (scene.whole?.view.scale ?? 0) * 1.001;
        if (scene.detail && sharper) showPainted(ctx, scene.detail, view);
      }}
    />
  );
});
