import { useEditSurroundings } from './edit-context.ts';
import { Field } from './Field.tsx';
import css from './Field.module.css';

interface TextFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  /** The field was left; that ends the edit, too. */
  readonly onDone?: (() => void) | undefined;
  readonly onFocus?: (() => void) | undefined;
  readonly hint?: string | undefined;
  readonly problem?: string | undefined;
  readonly maxLength?: number | undefined;
  readonly rows?: number | undefined;
  readonly placeholder?: string | undefined;
  readonly dataId?: string | undefined;
}

/** A plain line of text, or several lines with rows. */
export function TextField(props: TextFieldProps) {
  const { endEdit } = useEditSurroundings();
  return (
    <Field label={props.label} hint={props.hint} problem={props.problem}>
      {({ id, describedBy, invalid }) => {
        const shared = {
          id,
          value: props.value,
          maxLength: props.maxLength,
          placeholder: props.placeholder,
          'aria-describedby': describedBy,
          'aria-invalid': invalid || undefined,
          onFocus: props.onFocus,
          onBlur: () => {
            props.onDone?.();
            endEdit();
          },
          'data-field': props.dataId,
          autoComplete: 'off',
        };
        return props.rows === undefined ? (
          <input
            {...shared}
            type="text"
            className={css.control}
            enterKeyHint="done"
            onChange={(e) => props.onChange(e.target.value)}
          />
        ) : (
          <textarea
            {...shared}
            rows={props.rows}
            className={`${css.control} ${css.area}`}
            onChange={(e) => props.onChange(e.target.value)}
          />
        );
      }}
    </Field>
  );
}
