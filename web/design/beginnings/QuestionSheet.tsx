import { ArrowLeft, ArrowRight, Eye } from 'lucide-react';
import type { Beginning } from './beginnings.ts';
import { usePage, useUi } from '../../page/page-context.ts';
import { Button } from '../../ui/Button.tsx';
import { t } from '../../words/t.ts';
import css from './QuestionSheet.module.css';
import { QuestionField } from './QuestionField.tsx';

/** The few questions of the beginning chosen; the plate follows each answer as it is typed. */
export function QuestionSheet({ beginning }: { readonly beginning: Beginning }) {
  const { ui } = usePage();
  const view = useUi((s) => s.view);
  return (
    <>
      <div className={css.ways}>
        <Button kind="quiet" onClick={() => ui.getState().set({ begin: 'choose', view: 'plate' })}>
          <ArrowLeft size={16} aria-hidden /> {t('ask.choose')}
        </Button>
        <Button kind="quiet" onClick={() => ui.getState().set({ begin: 'all', step: 'say' })}>
          {t('ask.more')}
        </Button>
      </div>
      <div className={css.questions}>
        {beginning.questions.map((question) => (
          <QuestionField key={question.id} beginning={beginning} question={question} />
        ))}
      </div>
      <div className={css.done}>
        <Button kind="plain" onClick={() => ui.getState().set({ view: view === 'barrel' ? 'plate' : 'barrel' })}>
          <Eye size={16} aria-hidden /> {t(view === 'barrel' ? 'ask.plate' : 'ask.barrel')}
        </Button>
        <Button kind="next" onClick={() => ui.getState().set({ begin: undefined, step: 'size', view: 'plate' })}>
          {t('ask.done')} <ArrowRight size={16} aria-hidden />
        </Button>
      </div>
    </>
  );
}
