import { CircleDashed, FolderOpen } from 'lucide-react';
import { useEffect, useRef, useState } from 'react';
import { emptyDesign } from '../../geometry/design/defaults.ts';
import type { Design } from '../../geometry/design/schema.ts';
import type { PlateResult } from '../../geometry/plate.ts';
import { beginWith } from '../actions/begin-with.ts';
import { BEGINNINGS } from '../app/beginnings.ts';
import { openDesignFile } from '../app/open-design-file.ts';
import { usePage } from '../app/page-context.ts';
import { PlatePicture } from '../ui/PlatePicture.tsx';
import { t } from '../words/t.ts';
import css from './Beginnings.module.css';

/** Ready-made beginnings with pictures of their true plates, an empty head, or a file from before. */
export function Beginnings() {
  const { ui, own } = usePage();
  const file = useRef<HTMLInputElement>(null);

  function begin(design: Design, notice: string, beginnings: readonly Design[] = []): void {
    own.begin((before) => beginWith(before, design, beginnings), beginnings.length > 0 ? 'when-changed' : 'at-once');
    ui.getState().set({ selectedId: undefined, litFinding: undefined, plateId: undefined, notice });
  }

  async function open(chosen: File | undefined): Promise<void> {
    if (chosen === undefined) return;
    const opened = await openDesignFile(chosen);
    if ('design' in opened) begin(opened.design, t('say.opened', { title: opened.design.title }));
    else ui.getState().set({ notice: opened.problem });
  }

  return (
    <section aria-labelledby="begin-title" className={css.section}>
      <h3 id="begin-title" className={css.title}>
        {t('say.begin')}
      </h3>
      <ul className={css.row}>
        {BEGINNINGS.map((design) => (
          <li key={design.title}>
            <button
              type="button"
              className={css.card}
              onClick={() => begin(design, t('say.begun', { title: design.title }), ALL_BEGINNINGS)}
            >
              <span className={css.round}>
                <BeginningPicture design={design} />
              </span>
              {design.title}
            </button>
          </li>
        ))}
        <li>
          <button
            type="button"
            className={css.card}
            onClick={() => begin(emptyDesign(), t('say.begun', { title: t('say.empty') }), ALL_BEGINNINGS)}
          >
            <span className={css.round}>
              <CircleDashed size={28} strokeWidth={1.25} aria-hidden />
            </span>
            {t('say.empty')}
          </button>
        </li>
        <li>
          <button type="button" className={css.card} onClick={() => file.current?.click()}>
            <span className={css.round}>
              <FolderOpen size={28} strokeWidth={1.25} aria-hidden />
            </span>
            {t('say.open')}
          </button>
          <input
            ref={file}
            type="file"
            accept=".json,application/json"
            hidden
            data-testid="open-design"
            onChange={(e) => {
              void open(e.target.files?.[0]);
              e.target.value = '';
            }}
          />
        </li>
      </ul>
    </section>
  );
}

const ALL_BEGINNINGS = [...BEGINNINGS, emptyDesign()];

/** Made by the same worker as the plate itself, when that has nothing else to do. */
function BeginningPicture({ design }: { readonly design: Design }) {
  const { client } = usePage();
  const [plate, setPlate] = useState<PlateResult | undefined>(() => pictures.get(design));
  useEffect(() => {
    if (pictures.has(design)) return;
    let gone = false;
    void client.picture(design).then((made) => {
      if (made !== undefined) pictures.set(design, made);
      if (!gone) setPlate(made);
    });
    return () => {
      gone = true;
    };
  }, [client, design]);
  return plate === undefined ? null : <PlatePicture plate={plate} />;
}

/** The beginnings never change, so their pictures are made once a visit. */
const pictures = new Map<Design, PlateResult>();
