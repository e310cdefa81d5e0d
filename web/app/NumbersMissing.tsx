import { usePage, useUi } from '../page/page-context.ts';
import { Button } from '../ui/Button.tsx';
import { Check } from '../ui/Check.tsx';
import { t } from '../words/t.ts';
import css from './NumbersMissing.module.css';

/** The shop's own numbers are not there: said for as long as it is so, with the ways on. */
export function NumbersMissing() {
  const { ui, forgetStock } = usePage();
  const numbers = useUi((s) => s.numbers);
  const foreignFiles = useUi((s) => s.foreignFiles);
  if (!numbers) return null;
  return (
    <div className={css.bar} role="alert" data-testid="numbers-missing">
      <p>
        <strong>{t(`trouble.numbers.${numbers.why}`)}</strong> {numbers.problem} {t('trouble.numbers.instead')}{' '}
        {t('trouble.numbers.what')}
      </p>
      <div className={css.ways}>
        <Button kind="plain" onClick={() => location.reload()}>
          {t('trouble.numbers.again')}
        </Button>
        <Check
          label={t('trouble.numbers.allow')}
          checked={foreignFiles}
          onChange={(on) => ui.getState().set({ foreignFiles: on })}
        />
        {numbers.why === 'gone' && (
          <Button kind="quiet" onClick={forgetStock}>
            {t('trouble.numbers.forget')}
          </Button>
        )}
      </div>
    </div>
  );
}
