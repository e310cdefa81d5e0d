import { useEditSurroundings } from './edit-context.ts';
import { Field } from './Field.tsx';
import css from './Slider.module.css';

interface SliderProps {
  readonly label: string;
  readonly hint?: string;
  readonly value: number;
  readonly least: number;
  readonly most: number;
  readonly step?: number;
  readonly onChange: (value: number) => void;
}

/** A number one feels one's way to; arrow keys and pages as in any slider. */
export function Slider({ label, hint, value, least, most, step = 1, onChange }: SliderProps) {
  const { endEdit } = useEditSurroundings();
  return (
    <Field label={label} hint={hint}>
      {({ id, describedBy }) => (
        <div className={css.line}>
          <input
            id={id}
            type="range"
            className={css.slider}
            min={least}
            max={most}
            step={step}
            value={value}
            aria-describedby={describedBy}
            onChange={(e) => onChange(Number(e.target.value))}
            onPointerUp={endEdit}
            onBlur={endEdit}
          />
          <output htmlFor={id} className={css.value}>
            {value}
          </output>
        </div>
      )}
    </Field>
  );
}
