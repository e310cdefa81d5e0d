import type { Composed, Painted, Tone } from '../../geometry/artwork/painted.ts';
import type { Grey } from '../../geometry/artwork/grey.ts';
import type { TraceWish } from '../../geometry/artwork/trace.ts';

/** A drawing as a path 1 high about its middle, y up, and how wide it is. */
export interface SmallPicture {
  readonly path: string;
  readonly width: number;
}

/** What takes longer than a frame, done beside the page. */
export interface ArtworkApi {
  compose(shapes: readonly Painted[], cut: Tone): Promise<Composed>;
  trace(picture: Grey, wish: TraceWish): Promise<Composed>;
  motif(id: string, options: Readonly<Record<string, number>>): Promise<SmallPicture>;
}
