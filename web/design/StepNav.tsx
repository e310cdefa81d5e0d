import { STEPS } from '../state/ui-store.ts';
import { t } from '../words/t.ts';
import { usePage, useUi } from '../page/page-context.ts';
import css from './StepNav.module.css';

/** The four questions, in their order; any of them can be gone to at any time. */
export function StepNav() {
  const { ui } = usePage();
  const step = useUi((s) => s.step);
  return (
    <nav aria-label={t('page.steps.nav')} className={css.nav}>
      <ol>
        {STEPS.map((s, i) => (
          <li key={s}>
            <button
              type="button"
              aria-current={s === step ? 'step' : undefined}
              aria-label={`${i + 1}. ${t(`page.steps.${s}.title`)}`}
              onClick={() => ui.getState().set({ step: s, begin: undefined })}
            >
              <span className={css.number}>{i + 1}</span>
              {t(`page.steps.${s}.short`)}
            </button>
          </li>
        ))}
      </ol>
    </nav>
  );
}
