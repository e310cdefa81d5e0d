import { useId, type ReactNode } from 'react';
import css from './Field.module.css';

interface FieldProps {
  readonly label: string;
  readonly hint?: string | undefined;
  readonly problem?: string | undefined;
  readonly children: (ids: {
    readonly id: string;
    readonly describedBy: string | undefined;
    readonly invalid: boolean;
  }) => ReactNode;
}

/** A label, a control, and beneath it a hint or what is wrong: the frame of every field. */
export function Field({ label, hint, problem, children }: FieldProps) {
  const id = useId();
  const noteId = `${id}-note`;
  const note = problem ?? hint;
  return (
    <div className={css.field}>
      <label htmlFor={id} className={css.label}>
        {label}
      </label>
      {children({ id, describedBy: note === undefined ? undefined : noteId, invalid: problem !== undefined })}
      {note !== undefined && (
        <p id={noteId} className={problem === undefined ? css.hint : css.problem}>
          {note}
        </p>
      )}
    </div>
  );
}
