import type { DesignElement } from '../../../geometry/design/schema.ts';
import type { PlacingCommand } from './carry/placing-keys.ts';

/** What the stage is told about elements being placed, and what it tells. */
export interface StagePlacing {
  /** From rim to centre, as Tab walks them. */
  readonly elements: readonly DesignElement[];
  /** The first is the one worked on; the others go with it. */
  readonly chosenIds: readonly string[];
  /** A tap adds to the chosen or takes from them. */
  readonly several: boolean;
  readonly snapping: boolean;
  /** The text being typed over the plate. */
  readonly typingId: string | undefined;
  readonly onChoose: (ids: readonly string[]) => void;
  readonly onPlace: (elements: readonly DesignElement[]) => void;
  /** The hand let go: the moves since it took hold are one step. */
  readonly onPlaced: () => void;
  readonly onLocked: () => void;
  readonly onCommand: (command: PlacingCommand) => void;
  readonly onWalk: (id: string) => void;
  readonly onText: (id: string, text: string) => void;
  /** keep: as typed; otherwise as it was before. */
  readonly onTyped: (keep: boolean) => void;
}
