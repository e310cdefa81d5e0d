import { useId } from 'react';
import css from './Choice.module.css';
import { listOptions, type Options } from './options.ts';

interface ChoiceProps<T extends string> {
  readonly legend: string;
  /** Shown above the choice; otherwise only told to screen readers. */
  readonly showLegend?: boolean | undefined;
  readonly options: Options<T>;
  readonly value: T | undefined;
  readonly onChange: (value: T) => void;
  readonly quiet?: boolean | undefined;
}

/** One of a few, side by side: real radio buttons, so arrows and screen readers work as anywhere. */
export function Choice<T extends string>({ legend, showLegend, options, value, onChange, quiet }: ChoiceProps<T>) {
  const name = useId();
  return (
    <fieldset className={css.set}>
      <legend className={showLegend === true ? css.legend : 'sr-only'}>{legend}</legend>
      <div className={quiet === true ? css.quiet : css.row}>
        {listOptions(options).map((option) => (
          <label key={option.value} className={css.option} title={option.title}>
            <input
              type="radio"
              name={name}
              className="sr-only"
              checked={option.value === value}
              onChange={() => onChange(option.value)}
            />
            <span className={css.face}>{option.label}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
