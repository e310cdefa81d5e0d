import { Layers, Plus, Ruler, Type } from 'lucide-react';
import { useEffect, useRef, useState } from 'react';
import { whyNoOption, type OptionPart } from '../../../geometry/approval/options.ts';
import { addOption } from '../../state/actions/agreed/agree.ts';
import { useAct, useDesign } from '../../page/page-context.ts';
import { Button } from '../../ui/Button.tsx';
import { refusalWords } from '../../words/say/finding-words.ts';
import { t } from '../../words/t.ts';
import text from '../../ui/text.module.css';
import css from './AddOption.module.css';
import { AddFace } from './AddFace.tsx';
import { AddMaterial } from './AddMaterial.tsx';
import { AddSize } from './AddSize.tsx';

const KINDS = ['face', 'size', 'material'] as const;
type Kind = (typeof KINDS)[number];
const SIGNS = { face: Type, size: Ruler, material: Layers };

/** One more design to choose from: the same texts in another face, size or material. */
export function AddOption({ onAdded }: { readonly onAdded: (sentence: string) => void }) {
  const design = useDesign();
  const act = useAct();
  const [kind, setKind] = useState<Kind | undefined>();
  const panel = useRef<HTMLDivElement>(null);
  const full = whyNoOption(design);
  useEffect(() => {
    if (kind) panel.current?.focus({ preventScroll: true });
    if (kind) panel.current?.scrollIntoView({ block: 'nearest' });
  }, [kind]);

  function add(part: OptionPart & { readonly name: string }): void {
    act((d) => addOption(d, part));
    setKind(undefined);
    onAdded(t('proof.add.added', { name: part.name }));
  }

  if (full) return <p className={text.soft}>{refusalWords(full)}</p>;
  return (
    <div className={css.add}>
      <div className={css.buttons} role="group" aria-label={t('proof.add.title')}>
        <span className={css.label} aria-hidden>
          <Plus size={16} /> {t('proof.add.title')}
        </span>
        {KINDS.map((k) => {
          const Sign = SIGNS[k];
          return (
            <Button
              key={k}
              kind="plain"
              aria-expanded={kind === k}
              className={css.kind}
              onClick={() => setKind(kind === k ? undefined : k)}
            >
              <Sign size={16} aria-hidden /> {t(`proof.add.kinds.${k}`)}
            </Button>
          );
        })}
      </div>
      {kind && (
        <div
          ref={panel}
          className={css.panel}
          role="group"
          aria-label={t(`proof.add.kinds.${kind}`)}
          tabIndex={-1}
          onKeyDown={(e) => {
            if (e.key === 'Escape') setKind(undefined);
          }}
        >
          {kind === 'face' && <AddFace onAdd={add} />}
          {kind === 'size' && <AddSize onAdd={add} />}
          {kind === 'material' && <AddMaterial onAdd={add} />}
        </div>
      )}
    </div>
  );
}
