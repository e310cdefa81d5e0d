import { Field } from './Field.tsx';
import css from './Field.module.css';

interface SelectFieldProps {
  readonly label: string;
  readonly value: string;
  readonly options: readonly { readonly value: string; readonly label: string }[];
  /** Stands in the field while nothing is chosen (an empty value). */
  readonly placeholder?: string;
  readonly onChange: (value: string) => void;
}

/** One of several, from a list that unfolds. */
export function SelectField({ label, value, options, placeholder, onChange }: SelectFieldProps) {
  return (
    <Field label={label}>
      {({ id }) => (
        <select id={id} className={css.control} value={value} onChange={(e) => onChange(e.target.value)}>
          {placeholder !== undefined && (
            <option value="" disabled>
              {placeholder}
            </option>
          )}
          {options.map((option) => (
            <option key={option.value} value={option.value}>
              {option.label}
            </option>
          ))}
        </select>
      )}
    </Field>
  );
}
