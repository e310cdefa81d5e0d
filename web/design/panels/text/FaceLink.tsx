import { faceEntry } from '../../../../fonts/catalogue.ts';
import { useDesign, usePage } from '../../../page/page-context.ts';
import { Button } from '../../../ui/Button.tsx';
import { t } from '../../../words/t.ts';
import css from './FaceLink.module.css';

/** Says which face a text has, and leads to the second question to choose another. */
export function FaceLink({ id, face }: { readonly id: string; readonly face: string }) {
  const design = useDesign();
  const { ui } = usePage();
  const name = faceEntry(face)?.name ?? design.ownFaces.find((f) => f.id === face)?.name ?? face;
  return (
    <p className={css.line}>
      <span className={css.what}>{t('details.face')}</span> {name}
      <Button kind="quiet" onClick={() => ui.getState().set({ step: 'look', selectedId: id })}>
        {t('details.faceLink')}
      </Button>
    </p>
  );
}
