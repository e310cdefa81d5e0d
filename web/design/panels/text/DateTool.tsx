import { CalendarDays } from 'lucide-react';
import { useId, useState } from 'react';
import { readIso } from '../../../../geometry/sentences/calendar.ts';
import { useUi } from '../../../page/page-context.ts';
import { Button } from '../../../ui/Button.tsx';
import { IconButton } from '../../../ui/IconButton.tsx';
import { Field } from '../../../ui/fields/Field.tsx';
import fieldCss from '../../../ui/fields/Field.module.css';
import { findDate, placeDate, waysFor, writeDate } from '../../../words/dates.ts';
import { t } from '../../../words/t.ts';
import layout from '../../../ui/layout.module.css';
import css from './DateTool.module.css';

interface DateToolProps {
  readonly text: string;
  /** Letters the text may have at most. */
  readonly most: number;
  /** Where in the text the caret stands; its end when that is unknown. */
  readonly caret?: () => number | undefined;
  readonly onWrite: (text: string) => void;
}

/** A date picked from the calendar and put into a text the way the person writes dates; each way shown by example. */
export function DateTool({ text, most, caret, onWrite }: DateToolProps) {
  const language = useUi((s) => s.language);
  const [picked, setPicked] = useState<string>();
  const legend = useId();
  const now = new Date();
  const today = { year: now.getFullYear(), month: now.getMonth() + 1, day: now.getDate() };
  const found = findDate(text, today.year);
  const iso = picked ?? writeDate(found?.day ?? today, 'iso', 'en');
  const day = readIso(iso);
  return (
    <div className={css.tool}>
      <Field label={t('dates.pick')} hint={t(found === undefined ? 'dates.goesIn' : 'dates.replaces')}>
        {({ id, describedBy }) => (
          <input
            id={id}
            type="date"
            className={fieldCss.control}
            aria-describedby={describedBy}
            min="0001-01-01"
            max="3999-12-31"
            value={iso}
            onChange={(e) => setPicked(e.target.value)}
          />
        )}
      </Field>
      <div role="group" aria-labelledby={legend}>
        <p id={legend} className={css.legend}>
          {t('dates.ways')}
        </p>
        <div className={layout.buttons}>
          {waysFor(language).map((way) => {
            const written = day === undefined ? undefined : writeDate(day, way, language);
            const next =
              written === undefined ? '' : placeDate(text, caret?.() ?? text.length, written, today.year).trimStart();
            return (
              <Button
                key={way}
                kind="plain"
                className={css.way}
                disabled={written === undefined || next.length > most}
                onClick={() => onWrite(next)}
              >
                {written ?? t(`dates.names.${way}`)}
              </Button>
            );
          })}
        </div>
      </div>
    </div>
  );
}

interface DateButtonProps {
  readonly what: string;
  readonly open: boolean;
  readonly controls: string;
  readonly onPress: () => void;
}

/** Opens the tool for one text. */
export function DateButton({ what, open, controls, onPress }: DateButtonProps) {
  const name = t('dates.button', { what });
  return (
    <IconButton label={name} sign={CalendarDays} aria-expanded={open} aria-controls={controls} onClick={onPress} />
  );
}
