import { isFirstDesign } from './beginnings/first-design.ts';
import { lettingGo, STEPS } from '../state/ui-store.ts';
import { Steps } from '../ui/Steps.tsx';
import { t } from '../words/t.ts';
import { usePage, useUi } from '../page/page-context.ts';
import css from './StepNav.module.css';

/** The four questions, in their order; any of them can be gone to at any time. */
export function StepNav() {
  const { ui, design } = usePage();
  const step = useUi((s) => s.step);
  return (
    <Steps
      label={t('page.steps.nav')}
      now={step}
      steps={STEPS.map((value, i) => ({
        value,
        label: `${i + 1}. ${t(`page.steps.${value}.title`)}`,
        face: (
          <>
            <span className={css.number}>{i + 1}</span>
            {t(`page.steps.${value}.short`)}
          </>
        ),
      }))}
      onGo={(to) => {
        // beginnings that nobody chose from are passed by; questions of one that was chosen come back
        const begin = isFirstDesign(design.getState().history.present) ? 'all' : undefined;
        ui.getState().set({ step: to, begin, ...lettingGo(ui.getState()) });
      }}
    />
  );
}
