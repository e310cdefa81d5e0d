import { useRadiusMm } from '../../../page/use-radius.ts';
import { LengthField } from '../../../ui/fields/LengthField.tsx';

interface ShareFieldProps {
  readonly label: string;
  /** All as shares of the radius. */
  readonly share: number;
  readonly least: number;
  readonly most: number;
  readonly onChange: (share: number) => void;
}

/** A length on the plate looked at, which the design keeps as a share of the radius. */
export function ShareField({ label, share, least, most, onChange }: ShareFieldProps) {
  const radius = useRadiusMm();
  return (
    <LengthField
      label={label}
      mm={share * radius}
      leastMm={least * radius}
      mostMm={most * radius}
      onChange={(mm) => onChange(mm / radius)}
    />
  );
}
