import { MM_PER_INCH } from '../../geometry/units.ts';
import type { Unit } from '../words/preferences.ts';
import { t } from '../words/t.ts';
import { formatLength } from '../words/say/format-number.ts';
import { NumberField } from './NumberField.tsx';
import { parseLengthMm } from '../words/say/parse-number.ts';

interface LengthFieldProps {
  readonly label: string;
  /** undefined: nothing typed yet. */
  readonly mm: number | undefined;
  readonly unit: Unit;
  readonly onChange: (mm: number) => void;
  readonly onDone?: (() => void) | undefined;
  readonly hint?: string | undefined;
  readonly leastMm?: number | undefined;
  readonly mostMm?: number | undefined;
  readonly decimals?: number | undefined;
}

/** A length in the person's unit; millimetres on the inside. */
export function LengthField({ mm, unit, leastMm, mostMm, decimals, ...rest }: LengthFieldProps) {
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
