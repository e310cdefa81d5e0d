import begin from './begin.json';
import figures from './figures.json';
import keep from './keep.json';
import link from './link.json';
import page from './page.json';
import saving from './saving.json';
import stage from './stage.json';
import trouble from './trouble.json';
import verdict from './verdict.json';

/** What is said before the first plate is in sight, and by what is always there, in English, part by part. */
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
