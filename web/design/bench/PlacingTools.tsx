import {
  AlignCenterHorizontal,
  AlignCenterVertical,
  AlignEndHorizontal,
  AlignEndVertical,
  AlignStartHorizontal,
  AlignStartVertical,
  AlignVerticalSpaceAround,
  ArrowDown,
  ArrowLeft,
  ArrowRight,
  ArrowUp,
  CircleDashed,
  CircleDot,
  Clock3,
  Copy,
  Expand,
  FoldHorizontal,
  ListChecks,
  Loader,
  Lock,
  LockOpen,
  Magnet,
  RotateCcw,
  RotateCw,
  Shrink,
  TextCursorInput,
  Trash2,
  type LucideIcon,
} from 'lucide-react';
import { useState } from 'react';
import { isDrawing, isText } from '../../../geometry/design/kinds.ts';
import type { AlignTo } from '../../state/actions/elements/align-elements.ts';
import { isFree } from '../../state/actions/elements/move-element.ts';
import { ToolButton } from '../../ui/ToolButton.tsx';
import { t } from '../../words/t.ts';
import { CopyRoundForm } from './CopyRoundForm.tsx';
import css from './PlacingTools.module.css';
import type { Placing } from './use-placing.ts';

const ALIGN_SIGNS: readonly (readonly [AlignTo, LucideIcon])[] = [
  ['left', AlignStartVertical],
  ['centre', AlignCenterVertical],
  ['right', AlignEndVertical],
  ['top', AlignStartHorizontal],
  ['middle', AlignCenterHorizontal],
  ['bottom', AlignEndHorizontal],
  ['radius', CircleDot],
  ['angle', Clock3],
];

/** What can be done to the chosen elements, as buttons; the stage takes the same by keys. */
export function PlacingTools({ placing }: { readonly placing: Placing }) {
  const [rounding, setRounding] = useState<string>();
  const { chosen, said } = placing;
  const [first] = chosen;
  const one = chosen.length === 1 ? first : undefined;
  const locked = chosen.length > 0 && chosen.every((e) => e.locked === true);
  const free = chosen.filter(isFree).length;
  if (one !== undefined && rounding === one.id) {
    return (
      <div className={css.tools} role="group" aria-label={t('placing.round')}>
        <CopyRoundForm
          count={isDrawing(one) && one.around !== 'once' ? one.around.count : 6}
          least={isDrawing(one) ? 1 : 2}
          onDone={(count) => {
            if (count !== undefined) placing.copyRound(count);
            setRounding(undefined);
          }}
        />
      </div>
    );
  }
  const command = placing.onCommand;
  return (
    <div className={css.tools} role="group" aria-label={t('placing.tools')}>
      <p className={css.said} aria-hidden>
        {said}
      </p>
      <div className={css.row}>
        <ToolButton
          name={t('placing.several')}
          short={t('placing.severalShort')}
          sign={ListChecks}
          pressed={placing.several}
          onPress={() => placing.setSeveral(!placing.several)}
        />
        <ToolButton
          name={t('placing.snapping')}
          short={t('placing.snappingShort')}
          sign={Magnet}
          pressed={placing.snapping}
          onPress={() => placing.setSnapping(!placing.snapping)}
        />
        {chosen.length > 1 &&
          ALIGN_SIGNS.map(([to, sign]) => (
            <ToolButton
              key={to}
              name={t(`placing.align.${to}`)}
              short={t(`placing.alignShort.${to}`)}
              sign={sign}
              off={locked || (to !== 'radius' && to !== 'angle' && free < 2)}
              onPress={() => placing.align(to)}
            />
          ))}
        {chosen.length > 1 && (
          <>
            <ToolButton
              name={t('placing.spread.round')}
              short={t('placing.spreadShort.round')}
              sign={Loader}
              off={locked}
              onPress={() => placing.spread('round')}
            />
            <ToolButton
              name={t('placing.spread.height')}
              short={t('placing.spreadShort.height')}
              sign={AlignVerticalSpaceAround}
              off={locked || free < 3}
              onPress={() => placing.spread('height')}
            />
          </>
        )}
        {one && isText(one) && (
          <ToolButton
            name={t('placing.type')}
            short={t('placing.typeShort')}
            sign={TextCursorInput}
            onPress={() => command({ kind: 'type' })}
          />
        )}
        {one && one.kind !== 'border' && (
          <ToolButton
            name={t('placing.middle')}
            short={t('placing.middleShort')}
            sign={FoldHorizontal}
            off={locked}
            onPress={placing.toMiddle}
          />
        )}
        {first && (
          <>
            <ToolButton
              name={t('placing.duplicate')}
              short={t('placing.duplicateShort')}
              sign={Copy}
              onPress={() => command({ kind: 'duplicate' })}
            />
            {one && one.kind !== 'border' && (
              <ToolButton
                name={t('placing.round')}
                short={t('placing.roundShort')}
                sign={CircleDashed}
                onPress={() => setRounding(one.id)}
              />
            )}
            <ToolButton
              name={t(locked ? 'placing.unlock' : 'placing.lock')}
              short={t(locked ? 'placing.unlockShort' : 'placing.lockShort')}
              sign={locked ? LockOpen : Lock}
              onPress={() => placing.lock(!locked)}
            />
            <ToolButton
              name={t('placing.remove')}
              short={t('placing.removeShort')}
              sign={Trash2}
              off={locked}
              onPress={() => command({ kind: 'remove' })}
            />
            <ToolButton
              name={t('placing.turnLeft')}
              short={t('placing.turnShort')}
              sign={RotateCcw}
              off={locked || one?.kind === 'border'}
              onPress={() => command({ kind: 'turn', deg: -5 })}
            />
            <ToolButton
              name={t('placing.turnRight')}
              short={t('placing.turnShort')}
              sign={RotateCw}
              off={locked || one?.kind === 'border'}
              onPress={() => command({ kind: 'turn', deg: 5 })}
            />
            <ToolButton
              name={t('placing.smaller')}
              short={t('placing.smaller')}
              sign={Shrink}
              off={locked}
              onPress={() => command({ kind: 'size', steps: -1 })}
            />
            <ToolButton
              name={t('placing.larger')}
              short={t('placing.larger')}
              sign={Expand}
              off={locked}
              onPress={() => command({ kind: 'size', steps: 1 })}
            />
            {MOVES.map(([name, sign, right, up]) => (
              <ToolButton
                key={name}
                name={t(`placing.${name}`)}
                short={t('placing.moveShort')}
                sign={sign}
                off={locked}
                onPress={() => command({ kind: 'nudge', right, up })}
              />
            ))}
          </>
        )}
      </div>
    </div>
  );
}

const MOVES = [
  ['moveLeft', ArrowLeft, -1, 0],
  ['moveRight', ArrowRight, 1, 0],
  ['moveUp', ArrowUp, 0, 1],
  ['moveDown', ArrowDown, 0, -1],
] as const;
