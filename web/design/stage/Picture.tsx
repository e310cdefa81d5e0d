import { memo } from 'react';
import { Shape } from 'react-konva';
import { showPainted } from './scene.ts';
import type { Scene } from './use-scene.ts';
import type { View } from './view.ts';

export interface PictureProps {
  readonly scene: Scene;
  readonly view: View;
}

/** Wood, chime and plate: nothing but one or two bitmaps, so that zooming and panning cost next to nothing. */
export const Picture = memo(function Picture({ scene, view }: PictureProps) {
  return (
    <Shape
      listening={false}
      perfectDrawEnabled={false}
      sceneFunc={(konva) => {
        const ctx = konva._context;
        if (scene.whole) showPainted(ctx, scene.whole, view);
        const sharper = view.scale > (scene.whole?.view.scale ?? 0) * 1.001;
        if (scene.detail && sharper) showPainted(ctx, scene.detail, view);
      }}
    />
  );
});
