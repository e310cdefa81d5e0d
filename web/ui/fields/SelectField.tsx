import { Field } from './Field.tsx';
import css from './Field.module.css';
import { listOptions, type Options } from './options.ts';

interface SelectFieldProps<T extends string> {
  readonly label: string;
  readonly hint?: string | undefined;
  readonly problem?: string | undefined;
  readonly options: Options<T>;
  readonly value: T | '';
  /** Stands in the field while nothing is chosen (an empty value). */
  readonly placeholder?: string;
  readonly onChange: (value: T) => void;
}

/** One of many, from a list that folds down. */
export function SelectField<T extends string>({
  options,
  value,
  placeholder,
  onChange,
  ...frame
}: SelectFieldProps<T>) {
  const listed = listOptions(options);
  return (
    <Field {...frame}>
      {({ id, describedBy, invalid }) => (
        <select
          id={id}
          aria-describedby={describedBy}
          aria-invalid={invalid || undefined}
          className={css.control}
          value={value}
          onChange={(e) => {
            const picked = listed.find((option) => option.value === e.target.value);
            if (picked) onChange(picked.value);
          }}
        >
          {placeholder !== undefined && (
            <option value="" disabled>
              {placeholder}
            </option>
          )}
          {listed.map((option) => (
            <option key={option.value} value={option.value}>
              {option.label}
            </option>
          ))}
        </select>
      )}
    </Field>
  );
}
