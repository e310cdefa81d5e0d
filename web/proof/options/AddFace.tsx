import { FACES } from '../../../fonts/catalogue.ts';
import type { OptionPart } from '../../../geometry/approval/options.ts';
import { isText } from '../../../geometry/design/kinds.ts';
import { beginningOf } from '../../../geometry/sentences/shorten.ts';
import { useDesign } from '../../page/page-context.ts';
import { facesInUse, facesThatSuit } from '../../page/faces-that-suit.ts';
import { FaceSample } from '../../page/FaceSample.tsx';
import { faceSuits } from '../../words/say/record-words.ts';
import { t } from '../../words/t.ts';
import text from '../../ui/text.module.css';
import css from './AddOption.module.css';

interface AddFaceProps {
  readonly onAdd: (part: OptionPart & { readonly name: string }) => void;
}

/** Faces for all texts at once, each drawn with the customer's own words. */
export function AddFace({ onAdd }: AddFaceProps) {
  const design = useDesign();
  const texts = design.elements.filter(isText).filter(({ text }) => text.trim() !== '');
  const sample = beginningOf(texts[0]?.text.trim() ?? '', 18) || t('look.sample');
  if (texts.length === 0) return <p className={text.soft}>{t('proof.add.noTexts')}</p>;
  const take = (id: string, name: string): void =>
    onAdd({ name, faces: Object.fromEntries(design.elements.filter(isText).map((e) => [e.id, id])) });
  const used = facesInUse(design);
  return (
    <ul className={css.faces}>
      {facesThatSuit(FACES, texts.map((e) => e.text).join(''), used).map((face) => (
        <li key={face.id}>
          <button type="button" className={css.face} onClick={() => take(face.id, face.name)}>
            <FaceSample id={face.id} source={face.id} text={sample} />
            <span className={css.caption}>
              <strong>
                <bdi>{face.name}</bdi>
              </strong>{' '}
              {faceSuits(face)}
            </span>
          </button>
        </li>
      ))}
      {design.ownFaces
        .filter(({ id }) => !used.has(id))
        .map(({ id, name, data }) => (
          <li key={id}>
            <button type="button" className={css.face} onClick={() => take(id, name)}>
              <FaceSample id={id} source={data} text={sample} />
              <span className={css.caption}>
                <strong>
                  <bdi>{name}</bdi>
                </strong>
              </span>
            </button>
          </li>
        ))}
    </ul>
  );
}
