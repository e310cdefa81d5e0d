import { MM_PER_INCH } from '../../../geometry/units.ts';
import { t } from '../../words/t.ts';
import { formatLength } from '../../words/say/format-number.ts';
import { useEditSurroundings } from './edit-context.ts';
import { NumberField } from './NumberField.tsx';
import { parseLengthMm } from '../../words/say/parse-number.ts';

interface LengthFieldProps {
  readonly label: string;
  /** undefined: nothing typed yet. */
  readonly mm: number | undefined;
  readonly onChange: (mm: number) => void;
  readonly onEmpty?: (() => void) | undefined;
  readonly hint?: string | undefined;
  readonly leastMm?: number | undefined;
  readonly mostMm?: number | undefined;
  readonly decimals?: number | undefined;
}

/** A length in the person's unit; millimetres on the inside. */
export function LengthField({ mm, leastMm, mostMm, decimals, ...rest }: LengthFieldProps) {
  const { unit } = useEditSurroundings();
  return (
    <NumberField
      {...rest}
      value={mm ?? NaN}
      least={leastMm}
      most={mostMm}
      step={unit === 'mm' ? 1 : MM_PER_INCH / 8}
      unitLabel={t(`page.units.${unit}`)}
      show={(value) => (Number.isNaN(value) ? '' : formatLength(value, unit, decimals))}
      read={(typed) => parseLengthMm(typed, unit)}
    />
  );
}
