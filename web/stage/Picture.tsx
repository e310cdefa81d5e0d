import { Shape } from 'react-konva';
import type { SizePx } from '../barrel-view/size.ts';
import { showPainted } from './scene.ts';
import type { Scene } from './use-scene.ts';
import type { View } from './view.ts';

/** Wood, chime and plate: nothing but one or two bitmaps, so that zooming and panning cost next to nothing. */
export function Picture({ scene, size, view }: { scene: Scene; size: SizePx; view: View }) {
  return (
    <Shape
      listening={false}
      perfectDrawEnabled={false}
      sceneFunc={(konva) => {
        const ctx = konva._context;
        if (scene.whole) showPainted(ctx, scene.whole, size, view);
        if (scene.detail && view.scale > (scene.whole?.view.scale ?? 0) * 1.001)
          showPainted(ctx, scene.detail, size, view);
      }}
    />
  );
}
