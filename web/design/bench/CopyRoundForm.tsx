import { Minus, Plus } from 'lucide-react';
import { useEffect, useId, useRef, useState } from 'react';
import { MOST_ROUND } from '../../state/actions/elements/copy-round.ts';
import { Button } from '../../ui/Button.tsx';
import { IconButton } from '../../ui/IconButton.tsx';
import { t } from '../../words/t.ts';
import css from './PlacingTools.module.css';

/** How many of a thing go round the plate; undefined when it is left as it was. */
export function CopyRoundForm(props: {
  readonly count: number;
  readonly least: number;
  readonly onDone: (count: number | undefined) => void;
}) {
  const { least, onDone } = props;
  const [text, setText] = useState(String(props.count));
  const field = useRef<HTMLInputElement>(null);
  const id = useId();
  const count = Number(text);
  const fits = Number.isInteger(count) && count >= least && count <= MOST_ROUND;
  const step = (by: number) => setText(String(Math.min(MOST_ROUND, Math.max(least, (fits ? count : least) + by))));
  useEffect(() => field.current?.select(), []);
  return (
    <form
      className={css.round}
      onSubmit={(event) => {
        event.preventDefault();
        if (fits) onDone(count);
      }}
      onKeyDown={(event) => {
        if (event.key === 'Escape') onDone(undefined);
      }}
    >
      <label htmlFor={id}>{t('placing.roundCount')}</label>
      <IconButton label={t('placing.fewer')} sign={Minus} onClick={() => step(-1)} />
      <input
        ref={field}
        id={id}
        className={css.count}
        inputMode="numeric"
        autoComplete="off"
        autoFocus
        value={text}
        aria-invalid={!fits}
        onChange={(event) => setText(event.target.value)}
      />
      <IconButton label={t('placing.more')} sign={Plus} onClick={() => step(1)} />
      <Button kind="next" type="submit" disabled={!fits}>
        {t('placing.roundDo')}
      </Button>
      <Button kind="quiet" onClick={() => onDone(undefined)}>
        {t('placing.roundBack')}
      </Button>
    </form>
  );
}
