import { useState, type KeyboardEvent } from 'react';
import { t } from '../../words/t.ts';
import { useEditSurroundings } from './edit-context.ts';
import { Field } from './Field.tsx';
import css from './Field.module.css';
import { formatNumber } from '../../words/say/format-number.ts';
import { parseNumber, type Parsed } from '../../words/say/parse-number.ts';
import { ROUNDING } from '../../../geometry/units.ts';

interface NumberFieldProps {
  readonly label: string;
  /** NaN: none yet, shown as `show` has it. */
  readonly value: number;
  readonly onChange: (value: number) => void;
  /** Where nothing is an answer too: an emptied field is empty, and not what it was before. */
  readonly onEmpty?: (() => void) | undefined;
  readonly unitLabel?: string | undefined;
  readonly hint?: string | undefined;
  readonly least?: number | undefined;
  readonly most?: number | undefined;
  readonly whole?: boolean | undefined;
  /** What an arrow key adds. */
  readonly step?: number | undefined;
  readonly show?: ((value: number) => string) | undefined;
  readonly read?: ((typed: string) => Parsed) | undefined;
}

/**
 * A number as people type it. What is typed stays in the field even when it makes no sense: the value then
 * stays as it was, and a sentence says why.
 */
export function NumberField(props: NumberFieldProps) {
  const show = props.show ?? ((value: number) => formatNumber(value, 3));
  const read = props.read ?? parseNumber;
  const [typed, setTyped] = useState<{ readonly text: string; readonly for: number } | undefined>();
  // a value that changed elsewhere (undo, a mend, another unit) replaces what was typed
  const mine = typed !== undefined && near(typed.for, props.value) ? typed.text : undefined;
  const text = mine ?? show(props.value);
  const { endEdit } = useEditSurroundings();
  const [inside, setInside] = useState(false);
  const isEmpty = props.onEmpty !== undefined && mine?.trim() === '';
  const wrong = mine === undefined || isEmpty ? undefined : judge(read(mine), props, show);
  // a number half typed is not yet wrong: nothing is said, and nothing jumps, until the field is left
  const problem = inside ? undefined : wrong;

  function type(next: string): void {
    if (props.onEmpty && next.trim() === '') {
      setTyped({ text: next, for: NaN });
      if (!Number.isNaN(props.value)) props.onEmpty();
      return;
    }
    const parsed = read(next);
    if ('value' in parsed && judge(parsed, props, show) === undefined) {
      setTyped({ text: next, for: parsed.value });
      if (parsed.value !== props.value) props.onChange(parsed.value);
    } else {
      setTyped({ text: next, for: props.value });
    }
  }

  function leave(): void {
    setInside(false);
    if (wrong === undefined) setTyped(undefined);
    endEdit();
  }

  function nudge(event: KeyboardEvent): void {
    const way = event.key === 'ArrowUp' ? 1 : event.key === 'ArrowDown' ? -1 : 0;
    if (way === 0) return;
    event.preventDefault();
    const next = Math.min(
      props.most ?? Infinity,
      Math.max(props.least ?? -Infinity, (Number.isNaN(props.value) ? 0 : props.value) + way * (props.step ?? 1)),
    );
    setTyped(undefined);
    props.onChange(next);
  }

  return (
    <Field label={props.label} hint={props.hint} problem={problem}>
      {({ id, describedBy, invalid }) => (
        <div className={css.withUnit}>
          <input
            id={id}
            type="text"
            inputMode="decimal"
            autoComplete="off"
            enterKeyHint="done"
            className={css.control}
            value={text}
            aria-describedby={describedBy}
            aria-invalid={invalid || wrong !== undefined || undefined}
            onChange={(e) => type(e.target.value)}
            onFocus={() => setInside(true)}
            onBlur={leave}
            onKeyDown={nudge}
          />
          {props.unitLabel !== undefined && <span className={css.unit}>{props.unitLabel}</span>}
        </div>
      )}
    </Field>
  );
}

/** Inches and shares go to millimetres and back with a last digit that wavers. */
function near(a: number, b: number): boolean {
  return Object.is(a, b) || Math.abs(a - b) <= ROUNDING * Math.max(1, Math.abs(a));
}

function judge(parsed: Parsed, props: NumberFieldProps, show: (value: number) => string): string | undefined {
  if ('problem' in parsed) return t(`numbers.${parsed.problem}`);
  const { value } = parsed;
  if (props.whole === true && !Number.isInteger(value)) return t('numbers.whole');
  const tooLow = props.least !== undefined && value < props.least;
  const tooHigh = props.most !== undefined && value > props.most;
  if (!tooLow && !tooHigh) return undefined;
  const unit = props.unitLabel === undefined ? '' : ` ${props.unitLabel}`;
  if (props.least !== undefined && props.most !== undefined)
    return t('numbers.between', { least: show(props.least), most: `${show(props.most)}${unit}` });
  return tooLow
    ? t('numbers.atLeast', { least: `${show(props.least ?? 0)}${unit}` })
    : t('numbers.atMost', { most: `${show(props.most ?? 0)}${unit}` });
}
