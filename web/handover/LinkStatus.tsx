import text from '../ui/text.module.css';
import { t } from '../words/t.ts';
import css from './LinkStatus.module.css';

interface LinkStatusProps {
  readonly sentence: string;
  /** A link that the browser did not let the page copy. */
  readonly byHand: string | undefined;
}

/** What became of a link that was handed on; the link itself where it has to be copied by hand. */
export function LinkStatus({ sentence, byHand }: LinkStatusProps) {
  return (
    <>
      <p role="status" className={`${text.note} ${text.status}`}>
        {sentence}
      </p>
      {byHand !== undefined && (
        <input
          className={css.url}
          aria-label={t('link.field')}
          value={byHand}
          readOnly
          onFocus={(e) => e.currentTarget.select()}
        />
      )}
    </>
  );
}
