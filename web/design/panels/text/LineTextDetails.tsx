import type { LineText } from '../../../../geometry/design/schema.ts';
import { type LineTextPart, setLineText } from '../../../state/actions/set-fields.ts';
import { useAct } from '../../../page/page-context.ts';
import { Choice } from '../../../ui/fields/Choice.tsx';
import { t } from '../../../words/t.ts';
import { FaceLink } from './FaceLink.tsx';
import { MannerField } from './MannerField.tsx';
import { PositionFields } from './PositionFields.tsx';
import { ShareField } from './ShareField.tsx';
import { TrackingField } from './TrackingField.tsx';

const FIRST_WIDTH = 1;

/** Where a line of text stands, how tall it is and how it is spaced. */
export function LineTextDetails({ element }: { readonly element: LineText }) {
  const act = useAct();
  const set = (part: LineTextPart): void => act((d) => setLineText(d, element.id, part));
  return (
    <>
      <FaceLink id={element.id} face={element.face} />
      <PositionFields
        heightLabel={t('details.height')}
        height={element.capHeight}
        at={element}
        onHeight={(capHeight) => set({ capHeight })}
        onPlace={set}
      />
      <TrackingField id={element.id} tracking={element.tracking} />
      <Choice
        legend={t('details.fit')}
        showLegend
        value={element.fit === 'natural' ? 'natural' : 'width'}
        options={{ natural: t('details.natural'), width: t('details.width') }}
        onChange={(fit) => set({ fit: fit === 'natural' ? 'natural' : { width: FIRST_WIDTH } })}
      />
      {element.fit !== 'natural' && (
        <ShareField
          label={t('details.widthMm')}
          share={element.fit.width}
          least={0.01}
          most={2}
          onChange={(width) => set({ fit: { width } })}
        />
      )}
      <MannerField element={element} />
    </>
  );
}
