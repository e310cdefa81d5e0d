import { isText } from '../../../../geometry/design/kinds.ts';
import { beginningOf } from '../../../../geometry/sentences/shorten.ts';
import { useState } from 'react';
import { setFace } from '../../../state/actions/elements/set-face.ts';
import { useAct, useDesign, usePage, useUi } from '../../../page/page-context.ts';
import { fromRim } from '../../../state/from-rim.ts';
import { SelectField } from '../../../ui/fields/SelectField.tsx';
import { t } from '../../../words/t.ts';
import { BridgeFields } from './BridgeFields.tsx';
import { elementWords } from '../../../page/element-words.ts';
import { FacePicker } from './FacePicker.tsx';
import css from '../../../ui/fields.module.css';
import { HandBridges } from './HandBridges.tsx';

const ALL = '';

/** Second question: how does it look? Faces drawn as they are, and how the bridges run. */
export function StylePanel() {
  const design = useDesign();
  const { ui } = usePage();
  const act = useAct();
  const selectedId = useUi((s) => s.selectedId);
  const [everyText, setEveryText] = useState(selectedId === undefined);
  const texts = fromRim(design).flatMap((e) => (isText(e) ? [e] : []));
  const chosen = everyText ? undefined : texts.find((t) => t.id === selectedId);
  const faces = new Set((chosen === undefined ? texts : [chosen]).map((t) => t.face));
  const sample = beginningOf((chosen ?? texts[0])?.text.trim() ?? '', 18) || t('look.sample');

  function choose(id: string): void {
    setEveryText(id === ALL);
    if (id !== ALL) ui.getState().set({ selectedId: id });
  }

  return (
    <>
      {texts.length > 1 && (
        <SelectField
          label={t('look.forWhich')}
          value={chosen?.id ?? ALL}
          options={[
            { value: ALL, label: t('look.all') },
            ...texts.map((text) => ({ value: text.id, label: elementWords(text) })),
          ]}
          onChange={choose}
        />
      )}
      <FacePicker
        faces={faces}
        sample={sample}
        elementId={chosen?.id}
        onPick={(face) => act((d) => setFace(d, face, chosen?.id))}
      />
      <section className={css.section} aria-labelledby="bridges-title">
        <h3 id="bridges-title" className={css.title}>
          {t('look.bridges')}
        </h3>
        <BridgeFields />
        <HandBridges />
      </section>
    </>
  );
}
