import { ArrowLeft, ArrowRight } from 'lucide-react';
import { useEffect, useRef, type ComponentType } from 'react';
import { Beginnings } from './beginnings/Beginnings.tsx';
import { lettingGo, STEPS, type Step } from '../state/ui-store.ts';
import { Button } from '../ui/Button.tsx';
import { later } from '../ui/later.tsx';
import { t, withWords } from '../words/t.ts';
import { beginningById } from './beginnings/beginnings.ts';
import { isFirstDesign } from './beginnings/first-design.ts';
import { useDesign, usePage, usePlates, useUi } from '../page/page-context.ts';
import css from './Panel.module.css';

// what is not asked first comes when it is asked
const questionSheet = async () => (await withWords(import('./beginnings/QuestionSheet.tsx'), 'work')).QuestionSheet;
const QuestionSheet = later(questionSheet);
const StylePanel = later(async () => (await withWords(import('./panels/face/StylePanel.tsx'), 'work')).StylePanel);
const TextPanel = later(async () => (await withWords(import('./panels/text/TextPanel.tsx'), 'work')).TextPanel);
const SizePanel = later(async () => (await withWords(import('./panels/SizePanel.tsx'), 'work')).SizePanel);
const FilesPanel = later(
  async () => (await withWords(import('./panels/files/FilesPanel.tsx'), 'work', 'proof')).FilesPanel,
);

const PANELS: Record<Step, ComponentType> = { say: TextPanel, look: StylePanel, size: SizePanel, take: FilesPanel };

/** What stands in place of the first question: the beginnings, the questions of the design's own one, or nothing. */
function useBegin(): string | undefined {
  const design = useDesign();
  return useUi((s) => {
    if (s.step !== 'say' || s.begin === 'all') return undefined;
    if (s.begin === 'choose' || isFirstDesign(design)) return 'choose';
    return beginningById(design.beginning)?.id;
  });
}

/** What comes first after a choice is fetched while somebody chooses, once the first plate has come. */
function useQuestionsSoon(choosing: boolean): void {
  const drawn = usePlates((s) => Object.keys(s.plates).length > 0);
  useEffect(() => {
    if (!choosing || !drawn) return;
    // one that does not come is said when it is wanted
    const timer = setTimeout(() => void questionSheet().catch(() => undefined), SOON_MS);
    return () => clearTimeout(timer);
  }, [choosing, drawn]);
}

/** The first plate is painted before anything else is asked for. */
const SOON_MS = 250;

/** One question at a time, and the way to the next. */
export function Panel() {
  const { ui } = usePage();
  const step = useUi((s) => s.step);
  const scroller = useRef<HTMLDivElement>(null);
  const title = useRef<HTMLHeadingElement>(null);
  const begin = useBegin();
  useQuestionsSoon(begin === 'choose');
  const page = `${step} ${begin ?? ''}`;
  const shown = useRef(page);
  const at = STEPS.indexOf(step);
  const before = STEPS[at - 1];
  const after = STEPS[at + 1];
  const Questions = PANELS[step];

  // another question begins at its top, for eyes and for screen readers
  useEffect(() => {
    if (shown.current === page) return;
    shown.current = page;
    scroller.current?.scrollTo({ top: 0 });
    title.current?.focus({ preventScroll: true });
  }, [page]);

  const beginning = beginningById(begin);
  if (begin !== undefined) {
    return (
      <div ref={scroller} id="questions" className={css.scroller} tabIndex={-1}>
        <h2 ref={title} tabIndex={-1} className={css.title}>
          {beginning === undefined ? t('begin.title') : t(`begin.kinds.${beginning.id}`)}
        </h2>
        <div className={`${css.question} ${css.fill}`}>
          {beginning === undefined ? <Beginnings /> : <QuestionSheet key={beginning.id} beginning={beginning} />}
        </div>
      </div>
    );
  }

  return (
    <div ref={scroller} id="questions" className={css.scroller} tabIndex={-1}>
      <h2 ref={title} tabIndex={-1} className={css.title}>
        {t(`page.steps.${step}.title`)}
      </h2>
      <div className={css.question}>
        <Questions key={step} />
      </div>
      <div className={css.way}>
        {before !== undefined && (
          <Button kind="plain" onClick={() => ui.getState().set({ step: before })}>
            <ArrowLeft size={16} aria-hidden /> {t('page.steps.back')}
          </Button>
        )}
        {after !== undefined && step !== 'take' && (
          <Button kind="next" onClick={() => ui.getState().set({ step: after, ...lettingGo(ui.getState()) })}>
            {t(`page.steps.next.${step}`)} <ArrowRight size={16} aria-hidden />
          </Button>
        )}
      </div>
    </div>
  );
}
