import { useDesign, usePage, usePlates } from '../page/page-context.ts';
import { elementWords } from '../page/element-words.ts';
import { Button } from '../ui/Button.tsx';
import { t } from '../words/t.ts';
import layout from '../ui/layout.module.css';
import css from './HaltNote.module.css';

/** The plate is not worked out by itself any more: why, by which element, and the ways on. */
export function HaltNote() {
  const { ui, workAgain } = usePage();
  const design = useDesign();
  const halt = usePlates((s) => s.halt);
  if (!halt) return null;
  const { why, elementId } = halt;
  const element = design.elements.find(({ id }) => id === elementId);
  return (
    <div className={css.note} role="alert" data-testid="halt">
      <p>
        {t(`trouble.halt.${why}`)}
        {element && ` ${t('trouble.halt.at', { element: elementWords(element) })}`}
      </p>
      <div className={layout.buttons}>
        {element && (
          <Button
            kind="plain"
            onClick={() => ui.getState().set({ step: 'say', begin: undefined, selectedId: element.id })}
          >
            {t('trouble.halt.show')}
          </Button>
        )}
        <Button kind="plain" onClick={why === 'missing' ? () => location.reload() : workAgain}>
          {t(`trouble.halt.try.${why}`)}
        </Button>
      </div>
    </div>
  );
}
