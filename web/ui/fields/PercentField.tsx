import { formatNumber } from '../../words/say/format-number.ts';
import { t } from '../../words/t.ts';
import { NumberField } from './NumberField.tsx';

interface PercentFieldProps {
  readonly label: string;
  readonly share: number;
  /** Bounds and step in per cent. */
  readonly least: number;
  readonly most: number;
  readonly step?: number;
  readonly onChange: (share: number) => void;
}

/** A share of a whole, typed and shown in per cent. */
export function PercentField({ share, onChange, ...rest }: PercentFieldProps) {
  return (
    <NumberField
      {...rest}
      value={share * 100}
      unitLabel={t('details.percent')}
      show={(value) => formatNumber(value, 1)}
      onChange={(percent) => onChange(percent / 100)}
    />
  );
}
