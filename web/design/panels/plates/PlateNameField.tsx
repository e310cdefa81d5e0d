import { useState } from 'react';
import type { PlateSpec } from '../../../../geometry/design/schema.ts';
import { setPlate } from '../../../state/actions/plates/set-plate.ts';
import { useAct } from '../../../page/page-context.ts';
import { TextField } from '../../../ui/fields/TextField.tsx';
import { t } from '../../../words/t.ts';

const LONGEST_NAME = 60;

/** Name of a plate; a name may not be empty, so an empty field keeps the last one and says so. */
export function PlateNameField({ plate }: { readonly plate: PlateSpec }) {
  const act = useAct();
  const [emptied, setEmptied] = useState(false);
  return (
    <TextField
      label={t('size.plateName')}
      value={emptied ? '' : plate.name}
      maxLength={LONGEST_NAME}
      problem={emptied ? t('size.nameProblem') : undefined}
      onChange={(name) => {
        setEmptied(name === '');
        if (name !== '') act((d) => setPlate(d, plate.id, { name }));
      }}
      onDone={() => setEmptied(false)}
    />
  );
}
