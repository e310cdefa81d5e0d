import { DegreesField } from '../../../ui/fields/DegreesField.tsx';
import css from '../../../ui/fields.module.css';
import { t } from '../../../words/t.ts';
import { ShareField } from './ShareField.tsx';

interface PositionFieldsProps {
  readonly heightLabel: string;
  /** Shares of the radius. */
  readonly height: number;
  readonly at: { readonly x: number; readonly y: number; readonly turnDeg: number };
  readonly onHeight: (height: number) => void;
  readonly onPlace: (part: { readonly x?: number; readonly y?: number; readonly turnDeg?: number }) => void;
}

/** How tall a freely placed element is, how it is turned, and where its middle stands. */
export function PositionFields({ heightLabel, height, at, onHeight, onPlace }: PositionFieldsProps) {
  return (
    <div className={css.pair}>
      <ShareField label={heightLabel} share={height} least={0.005} most={2} onChange={onHeight} />
      <DegreesField label={t('details.turn')} deg={at.turnDeg} onChange={(turnDeg) => onPlace({ turnDeg })} />
      <ShareField label={t('details.x')} share={at.x} least={-1} most={1} onChange={(x) => onPlace({ x })} />
      <ShareField label={t('details.y')} share={at.y} least={-1} most={1} onChange={(y) => onPlace({ y })} />
    </div>
  );
}
