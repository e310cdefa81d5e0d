import {
  ArrowLeft,
  ArrowRight,
  ChevronsLeftRight,
  ChevronsRightLeft,
  PlusSquare,
  RotateCcw,
  RotateCw,
  Trash2,
  Undo2,
} from 'lucide-react';
import type { KeyboardEvent } from 'react';
import { bridgeCommand } from '../stage/bridge-keys.ts';
import { ToolButton } from '../../ui/ToolButton.tsx';
import { lengthWords } from '../../words/say/format-number.ts';
import { t } from '../../words/t.ts';
import css from './BridgeTools.module.css';
import { useUi } from '../../page/page-context.ts';
import type { BridgeWork } from './use-bridge-work.ts';
import { shapeName } from '../../words/say/record-words.ts';

const TURN_DEG = 5;

/** What can be done to the chosen bridge, as buttons; the same by keys while one of them has the focus. */
export function BridgeTools({ work }: { readonly work: BridgeWork }) {
  const unit = useUi((s) => s.unit);
  const { chosen, adding, bridges } = work;
  const width = chosen && lengthWords(chosen.widthMm, unit, unit === 'mm' ? 1 : 3);
  const what =
    chosen &&
    `${t('bridges.on', { label: shapeName(chosen.label) })}${chosen.editId === undefined ? '' : `, ${t('bridges.byHand')}`}`;
  const status = adding
    ? t('bridges.addHint')
    : chosen && what !== undefined && width !== undefined
      ? chosen.index < 0
        ? t('bridges.waiting', { what: shapeName(chosen.label), width })
        : t('bridges.chosen', { at: chosen.index + 1, of: bridges.length, what, width })
      : t('bridges.pick', { count: bridges.length });

  function press(event: KeyboardEvent): void {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const command = bridgeCommand(event.key, event.shiftKey);
    if (!command || (!chosen && command.kind !== 'leave')) return;
    event.preventDefault();
    work.obey(command);
  }

  function add(): void {
    work.setAdding(!adding);
    // From here on keys are about the place on the plate.
    document.querySelector<HTMLElement>('[data-plate-stage]')?.focus({ preventScroll: true });
  }

  return (
    <div className={css.tools} role="group" aria-label={t('bridges.tools')} onKeyDown={press}>
      <div className={css.which}>
        <ToolButton
          name={t('bridges.previous')}
          off={bridges.length === 0}
          onPress={() => work.step(-1)}
          sign={ArrowLeft}
        />
        <p className={css.status} role="status" data-testid="bridge-status">
          {status}
        </p>
        <ToolButton
          name={t('bridges.next')}
          off={bridges.length === 0}
          onPress={() => work.step(1)}
          sign={ArrowRight}
        />
      </div>
      <div className={css.row}>
        <ToolButton
          name={t('bridges.add')}
          short={t('bridges.addShort')}
          pressed={adding}
          onPress={add}
          sign={PlusSquare}
        />
        <ToolButton
          name={t('bridges.turnLeft')}
          short={t('bridges.turnShort')}
          off={!chosen}
          onPress={() => work.turn(-TURN_DEG)}
          sign={RotateCcw}
        />
        <ToolButton
          name={t('bridges.turnRight')}
          short={t('bridges.turnShort')}
          off={!chosen}
          onPress={() => work.turn(TURN_DEG)}
          sign={RotateCw}
        />
        <ToolButton
          name={t('bridges.narrower')}
          short={t('bridges.narrower')}
          off={!chosen}
          onPress={() => work.widen(-1)}
          sign={ChevronsRightLeft}
        />
        <ToolButton
          name={t('bridges.wider')}
          short={t('bridges.wider')}
          off={!chosen}
          onPress={() => work.widen(1)}
          sign={ChevronsLeftRight}
        />
        <ToolButton
          name={t('bridges.remove')}
          short={t('bridges.removeShort')}
          off={!chosen}
          onPress={() => work.remove()}
          sign={Trash2}
        />
        <ToolButton
          name={chosen ? t('bridges.giveBack', { what: shapeName(chosen.label) }) : t('bridges.giveBackNone')}
          short={t('bridges.giveBackShort')}
          off={!work.shapeEdited}
          onPress={() => work.giveBack()}
          sign={Undo2}
        />
      </div>
    </div>
  );
}
