import { type Claim, type Measured, once, rounded } from '../claim.ts';
import { type DragMeasured, measureDrag } from './drag.ts';
import { NO_BROWSER } from './serve-page.ts';

const LEAST_FRAMES = 50;
const LONG_MS = 50;

const drag = once(measureDrag);

/** A text of the demo head dragged over the stage, by a hand that moves with each frame. */
export const STAGE_CLAIMS: readonly Claim[] = [
  {
    name: 'stage-drag-frames',
    wanted: `above ${LEAST_FRAMES}`,
    timed: true,
    measure: () =>
      measured((d) => ({ value: rounded(d.framesPerSecond), unit: 'a second', ok: d.framesPerSecond > LEAST_FRAMES })),
  },
  {
    name: 'stage-drag-frame-work',
    wanted: `at most ${1000 / LEAST_FRAMES}, so that ${LEAST_FRAMES} frames go into a second`,
    timed: true,
    measure: () => measured((d) => ({ value: rounded(d.frameMs), unit: 'ms', ok: d.frameMs <= 1000 / LEAST_FRAMES })),
  },
  {
    name: 'stage-drag-long-tasks',
    wanted: `none above ${LONG_MS} ms of the thread's own time`,
    timed: true,
    measure: () =>
      measured((d) => ({
        value:
          d.longTasksMs.length === 0
            ? `none, the longest ${rounded(d.longestTaskMs)}`
            : d.longTasksMs.map((ms) => rounded(ms)).join(', '),
        unit: 'ms',
        ok: d.longTasksMs.length === 0,
      })),
  },
];

async function measured(judge: (drag: DragMeasured) => Measured): Promise<Measured> {
  const found = await drag();
  return found ? judge(found) : NO_BROWSER;
}
