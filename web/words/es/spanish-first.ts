import begin from './begin.json';
import figures from './figures.json';
import keep from './keep.json';
import link from './link.json';
import page from './page.json';
import saving from './saving.json';
import stage from './stage.json';
import trouble from './trouble.json';
import verdict from './verdict.json';

/** The same in Spanish as in english-first.ts. */
export const words = {
  begin,
  figures,
  keep,
  link,
  page,
  saving,
  stage,
  trouble,
  verdict,
};
