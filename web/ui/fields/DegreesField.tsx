import { t } from '../../words/t.ts';
import { NumberField } from './NumberField.tsx';

interface DegreesFieldProps {
  readonly label: string;
  readonly hint?: string;
  readonly deg: number;
  readonly least?: number;
  readonly step?: number;
  readonly onChange: (deg: number) => void;
}

/** An angle; a whole turn either way unless told otherwise. */
export function DegreesField({ deg, least = -360, ...rest }: DegreesFieldProps) {
  return <NumberField {...rest} value={deg} least={least} most={360} unitLabel={t('details.degrees')} />;
}
