import { MOTIFS } from '../../../geometry/motifs/catalogue.ts';
import { addMotif } from '../../state/actions/elements/add-motif.ts';
import { useAct, useCurrentPlate, usePage } from '../../page/page-context.ts';
import { useRadiusMm } from '../../page/use-radius.ts';
import { Button } from '../../ui/Button.tsx';
import { Modal } from '../../ui/Modal.tsx';
import { t } from '../../words/t.ts';
import { DrawingPicture } from './DrawingPicture.tsx';
import { end } from './import-store.ts';
import { motifName } from '../../page/motif-words.ts';
import css from './MotifPicker.module.css';
import { useMotifPictures } from './use-motif-pictures.ts';

const ALL: readonly string[] = MOTIFS.map(({ id }) => id);

/** All motifs with their pictures; choosing one puts it on the plate. */
export function MotifPicker({ inPlaceOf }: { readonly inPlaceOf: string | undefined }) {
  const act = useAct();
  const { ui } = usePage();
  const { plate } = useCurrentPlate();
  const radius = useRadiusMm();
  const pictures = useMotifPictures(ALL);

  function choose(id: string): void {
    act((design) => {
      const change = addMotif(design, id, plate?.layout.extents ?? [], radius, inPlaceOf);
      const added = inPlaceOf ?? change.design.elements.at(-1)?.id;
      ui.getState().set({ selectedId: added });
      return change;
    });
    end();
  }

  return (
    <Modal wide labelledBy="motifs-title" onCancel={end}>
      <div className={css.box}>
        <header className={css.head}>
          <h2 id="motifs-title">{t('artwork.motifsTitle')}</h2>
          <Button kind="quiet" onClick={end}>
            {t('artwork.cancel')}
          </Button>
        </header>
        <p className={css.lead}>{t('artwork.motifsLead')}</p>
        <ul className={css.grid}>
          {MOTIFS.map((motif) => {
            const picture = pictures[motif.id];
            return (
              <li key={motif.id}>
                <button type="button" className={css.one} onClick={() => choose(motif.id)}>
                  <span className={css.picture}>{picture && <DrawingPicture {...picture} />}</span>
                  <span>{motifName(motif)}</span>
                </button>
              </li>
            );
          })}
        </ul>
      </div>
    </Modal>
  );
}
