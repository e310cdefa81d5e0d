import type { Design } from '../../../geometry/design/schema.ts';
import type { PlateClient } from '../../worker/plate-client.ts';
import { createLatestWins } from '../../worker/latest-wins.ts';
import type { Planned } from '../../worker/plate-api.ts';
import { plateKey } from '../../handover/price/plate-key.ts';
import type { ProofStore } from './proof-store.ts';

/** Plates kept: four designs side by side of a dozen plates each, and those before the last change. */
const MOST_KEPT = 96;

export interface ProofWork {
  /** Plans every plate of these designs, the first design first; a newer call makes an older one stop after its plate. */
  plan(designs: readonly Design[]): void;
  /** Nobody looks any more: what waits is given up. */
  rest(): void;
  /** What failed is tried again. */
  again(designs: readonly Design[]): void;
}

export function createProofWork(client: Pick<PlateClient, 'plan'>, store: ProofStore): ProofWork {
  const queue = createLatestWins<readonly Design[]>(async (designs, stale) => {
    for (const design of designs) {
      for (const { id } of design.plates) {
        const key = plateKey(design, id);
        if (store.getState().planned.has(key)) continue;
        const made = await client.plan(design, id);
        keep(key, made);
        if (stale()) return;
      }
    }
  });

  function keep(key: string, made: Planned): void {
    const all = [...store.getState().planned, [key, made] as const];
    store.getState().set({ planned: new Map(all.slice(-MOST_KEPT)) });
  }

  return {
    plan: (designs) => queue.submit(designs),
    rest: () => queue.submit([]),
    again(designs) {
      const { planned } = store.getState();
      store.getState().set({ planned: new Map([...planned].filter(([, made]) => !('problem' in made))) });
      queue.submit(designs);
    },
  };
}
