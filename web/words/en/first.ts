import begin from './first/begin.json';
import figures from './first/figures.json';
import keep from './first/keep.json';
import link from './first/link.json';
import page from './first/page.json';
import saving from './first/saving.json';
import stage from './first/stage.json';
import trouble from './first/trouble.json';
import verdict from './first/verdict.json';

/** What English says before the first plate is in sight: at hand from the start, so not found by its folder. */
export const first = { begin, figures, keep, link, page, saving, stage, trouble, verdict };
