import { useDesign } from '../../page/page-context.ts';
import { spoken, t } from '../../words/t.ts';
import { spellTexts, type SpeltDate } from './spell-texts.ts';
import textCss from '../../ui/text.module.css';
import css from './TextsToRead.module.css';

/** Every text on a line of its own, large and plain, dates written out beneath. */
export function TextsToRead() {
  const texts = spellTexts(useDesign(), spoken());
  if (texts.length === 0) return <p>{t('proof.texts.none')}</p>;
  return (
    <>
      <p className={textCss.soft}>{t('proof.texts.hint')}</p>
      <ol className={css.texts}>
        {texts.map(({ id, text, dates }) => (
          <li key={id}>
            <p className={css.text} data-testid="text-to-read">
              {text}
            </p>
            {dates.map((date) => (
              <p key={date.text} className={date.days.length === 1 ? textCss.soft : textCss.look}>
                {dateWords(date)}
              </p>
            ))}
          </li>
        ))}
      </ol>
    </>
  );
}

function dateWords({ text, days }: SpeltDate): string {
  const [day] = days;
  if (day === undefined) return t('proof.texts.noDay', { text });
  if (days.length === 1) return t('proof.texts.day', { text, day });
  return t('proof.texts.either', { text, days: days.join(t('proof.texts.or')) });
}
