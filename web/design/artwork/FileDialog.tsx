import { useEffect, useId, useState } from 'react';
import type { Composed, Tone } from '../../../geometry/artwork/painted.ts';
import { addArtwork } from '../../state/actions/elements/add-artwork.ts';
import { useAct, useCurrentPlate, usePage } from '../../page/page-context.ts';
import { useRadiusMm } from '../../page/use-radius.ts';
import { Button } from '../../ui/Button.tsx';
import { Choice } from '../../ui/fields/Choice.tsx';
import { Modal } from '../../ui/Modal.tsx';
import { artworkWorker, endArtworkWork } from '../../worker/artwork-client.ts';
import { WorkerGone } from '../../worker/life.ts';
import { t } from '../../words/t.ts';
import { DrawingPicture } from './DrawingPicture.tsx';
import css from './FileDialog.module.css';
import { usualThreshold } from './grey.ts';
import { importFile, type Imported } from './import-file.ts';
import { end } from './import-store.ts';
import { Slider } from '../../ui/fields/Slider.tsx';

interface FileDialogProps {
  readonly file: File;
  readonly inPlaceOf: string | undefined;
}

/** A file looked at before it is taken in: what will be cut of it, and what was left out. */
export function FileDialog({ file, inPlaceOf }: FileDialogProps) {
  const [read, setRead] = useState<Imported | undefined>();
  const [cut, setCut] = useState<Tone>('dark');
  const [threshold, setThreshold] = useState(50);
  const [smoothing, setSmoothing] = useState(25);
  const title = useId();
  const act = useAct();
  const { ui } = usePage();
  const radius = useRadiusMm();
  const { plate } = useCurrentPlate();

  useEffect(() => {
    let gone = false;
    void importFile(file).then((imported) => {
      if (gone) return;
      if ('kind' in imported && imported.kind === 'picture')
        setThreshold(Math.round(100 * usualThreshold(imported.grey.values)));
      setRead(imported);
    });
    return () => {
      gone = true;
    };
  }, [file]);

  // Once closed, nobody waits for a picture that is still worked on.
  useEffect(() => endArtworkWork, []);

  const made = useMade(read, cut, threshold, smoothing);
  const drawn = made && !('trouble' in made) ? made : undefined;
  const problem = read && 'refused' in read ? read.refused : made && 'trouble' in made ? made.trouble : undefined;
  const svg = read && 'kind' in read && read.kind === 'svg' ? read.drawing : undefined;
  const picture = read && 'kind' in read && read.kind === 'picture';

  function take(): void {
    if (!drawn) return;
    const heightMm = svg?.mmPerUnit === undefined ? undefined : drawn.height * svg.mmPerUnit;
    act((design) => {
      const change = addArtwork(
        design,
        { name: file.name, path: drawn.path, width: drawn.width, heightMm },
        plate?.layout.extents ?? [],
        radius,
        inPlaceOf,
      );
      ui.getState().set({ selectedId: inPlaceOf ?? change.design.elements.at(-1)?.id });
      return change;
    });
    end();
  }

  return (
    <Modal wide labelledBy={title} onCancel={end}>
      <div className={css.box}>
        <h2 id={title} className={css.title}>
          {t('artwork.title', { name: file.name })}
        </h2>
        <div className={css.view} data-busy={made === undefined || undefined}>
          {drawn ? <DrawingPicture {...drawn} /> : problem === undefined && <p>{t('artwork.reading')}</p>}
          {problem !== undefined && (
            <p className={css.problem} role="alert" data-testid="artwork-problem">
              {t(`artwork.refused.${problem}`)}
            </p>
          )}
        </div>
        <div className={css.side}>
          {(picture || svg?.bothTones) && (
            <Choice
              legend={t('artwork.cut')}
              showLegend
              value={cut}
              options={{ dark: t('artwork.cutDark'), light: t('artwork.cutLight') }}
              onChange={setCut}
            />
          )}
          {picture && (
            <>
              <Slider
                label={t('artwork.threshold')}
                hint={t('artwork.thresholdHint')}
                value={threshold}
                least={2}
                most={98}
                onChange={setThreshold}
              />
              <Slider
                label={t('artwork.smoothing')}
                hint={t('artwork.smoothingHint')}
                value={smoothing}
                least={0}
                most={100}
                onChange={setSmoothing}
              />
            </>
          )}
          <div role="status" className={css.notes} data-testid="artwork-notes">
            {drawn && <p>{t('artwork.openings', { count: drawn.openings })}</p>}
            {drawn && drawn.specks > 0 && <p>{t('artwork.specks', { count: drawn.specks })}</p>}
            {svg?.notes.map((note) => (
              <p key={note}>{t(`artwork.notes.${note}`)}</p>
            ))}
          </div>
          {problem === undefined && <p className={css.hint}>{t('artwork.bridgedHint')}</p>}
        </div>
        <footer className={css.foot}>
          <Button kind="quiet" onClick={end}>
            {t('artwork.cancel')}
          </Button>
          <Button kind="next" disabled={!drawn} onClick={take}>
            {t('artwork.take')}
          </Button>
        </footer>
      </div>
    </Modal>
  );
}

type MadeOf = Composed | { readonly trouble: 'notLoaded' };

/** What comes of the file as it is set; the last answer stays until the next is there. */
function useMade(read: Imported | undefined, cut: Tone, threshold: number, smoothing: number): MadeOf | undefined {
  const [made, setMade] = useState<MadeOf | undefined>();
  useEffect(() => {
    if (read === undefined || 'refused' in read) return;
    let gone = false;
    // Sliders ask many times a second: only where they rest is worked out.
    const soon = setTimeout(() => {
      const asked =
        read.kind === 'svg'
          ? artworkWorker().compose(read.drawing.shapes, read.drawing.bothTones ? cut : onlyTone(read))
          : artworkWorker().trace(read.grey, { threshold: threshold / 100, smoothing: smoothing / 100, cut });
      asked.then(
        (answer) => !gone && setMade(answer),
        (fault: unknown) =>
          !gone &&
          setMade({ trouble: fault instanceof WorkerGone && fault.why === 'missing' ? 'notLoaded' : 'tooDetailed' }),
      );
    }, 60);
    return () => {
      gone = true;
      clearTimeout(soon);
    };
  }, [read, cut, threshold, smoothing]);
  return made;
}

/** Where everything is of one tone, that is what is cut: a drawing in yellow alone is still a drawing. */
function onlyTone(read: Extract<Imported, { kind: 'svg' }>): Tone {
  const first = read.drawing.shapes[0];
  return first?.fill?.tone ?? first?.stroke?.tone ?? 'dark';
}
