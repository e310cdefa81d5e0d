import { expect, type Locator, type Page } from '@playwright/test';
import { readdirSync, readFileSync } from 'node:fs';
import { test } from './walk.ts';

/*
 * Words come with the code that says them. Everything that can be opened is opened, on a phone, by somebody who does
 * not speak English: nothing may show a word's name in place of the word, nor the English one. A word that has not
 * been loaded is an error in the console besides, which ends any journey.
 */

test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

for (const [language, locale] of [
  ['de', 'de-DE'],
  ['fr', 'fr-FR'],
] as const) {
  test.describe(language, () => {
    test.use({ locale });
    test('every panel and page speaks it, all of it', { tag: language === 'de' ? [] : '@long' }, async ({ page }) => {
      const own = wordsOf(language);
      const w = (key: string): string => own.get(key) ?? key;
      const see = async (): Promise<void> => expect(await strangers(page, language)).toEqual([]);
      const button = (key: string): Locator => page.getByRole('button', { name: w(key), exact: true });
      const step = (name: string): Promise<void> =>
        page
          .getByRole('navigation', { name: w('page.steps.nav') })
          .getByRole('button', { name: w(`page.steps.${name}.title`) })
          .click();

      await page.goto('/');
      await expect(page.getByRole('heading', { name: w('begin.title') })).toBeVisible();
      await see();
      await page.getByRole('button', { name: w('begin.kinds.name-over-motif') }).click();
      await expect(page.getByRole('button', { name: w('ask.choose') })).toBeVisible();
      await see();

      await step('say');
      await button('ask.more').click();
      await expect(page.locator('input[data-field]').first()).toBeVisible();
      await unfold(page);
      for (const adjust of await page.getByRole('button', { name: filled(w('say.adjust')) }).all()) {
        await adjust.click();
        await see();
      }
      await page.locator('input[data-field]').first().fill('x'.repeat(90));
      await see();

      await step('look');
      await expect(page.getByRole('radiogroup').or(page.getByRole('radio')).first()).toBeVisible();
      await unfold(page);
      await see();
      await step('size');
      await unfold(page);
      await see();
      await step('take');
      await unfold(page);
      await see();

      await page.getByRole('button', { name: w('verdict.show') }).click();
      await expect(page.getByRole('list', { name: w('verdict.list') })).toBeVisible();
      await see();
      await button('bridges.toggle').click();
      await see();
      await button('bridges.toggle').click();
      await page.getByText(w('page.views.barrel'), { exact: true }).click();
      await see();
      await page.getByRole('button', { name: w('keep.button') }).click();
      await expect(page.getByRole('dialog')).toBeVisible();
      await see();
      await page.keyboard.press('Escape');

      const pages = page.getByRole('navigation', { name: w('page.pages.switch') });
      await pages.getByRole('button').click();
      await pages.getByRole('button', { name: w('page.pages.cut') }).click();
      await expect(page.getByRole('heading', { name: w('cut.title') })).toBeVisible();
      await unfold(page);
      await see();
      await button('page.top.settings').click();
      await see();
    });
  });
}

/** Opens every fold there is, also those within. */
async function unfold(page: Page): Promise<void> {
  for (let i = 0; i < 3; i++) {
    await page.waitForTimeout(200);
    await page.evaluate(() => {
      for (const fold of document.querySelectorAll('details')) fold.open = true;
    });
  }
}

/** What is said on the page that should not be: names of words, and words that only English has. */
async function strangers(page: Page, language: 'de' | 'fr'): Promise<string[]> {
  const said = await page.evaluate(() => {
    const names = ['aria-label', 'title', 'placeholder', 'alt'];
    const attributes = [...document.querySelectorAll('*')].flatMap((e) => names.map((name) => e.getAttribute(name)));
    const texts: string[] = [];
    const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let at = walk.nextNode(); at !== null; at = walk.nextNode()) texts.push(at.textContent ?? '');
    return [...attributes, ...texts].flatMap((text) => (text === null ? [] : [text.trim()])).filter((t) => t !== '');
  });
  const english = wordsOf('en');
  const own = new Set(wordsOf(language).values());
  const foreign = new Set([...english.values()].filter((word) => !own.has(word)));
  const parts = new Set([...english.keys()].map((key) => key.split('.')[0]));
  const isName = (text: string): boolean => /^[a-z]\w*(\.[\w-]+)+$/.test(text) && parts.has(text.split('.')[0]);
  expect(said.length).toBeGreaterThan(20);
  return [...new Set(said)].filter((text) => foreign.has(text) || isName(text));
}

/** All words of a language by name, those with gaps left out: they are never said as they stand. */
function wordsOf(language: string): Map<string, string> {
  const folder = new URL(`../web/words/${language}/`, import.meta.url);
  const found = new Map<string, string>();
  const collect = (words: object, before: string): void => {
    for (const [name, word] of Object.entries(words) as [string, unknown][]) {
      if (typeof word !== 'string') collect(word as object, `${before}${name}.`);
      else found.set(before + name, word);
    }
  };
  for (const path of readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) =>
    name.endsWith('.json'),
  )) {
    const [group = '', file = ''] = path.split('/');
    // what the kernel says and what stands on paper holds several parts a file
    const holdsParts = group === 'kernel' || group === 'paper';
    collect(
      JSON.parse(readFileSync(new URL(path, folder), 'utf8')) as object,
      holdsParts ? '' : `${file.replace('.json', '')}.`,
    );
  }
  return found;
}

/** A word whose gaps are filled with anything. */
function filled(word: string): RegExp {
  const parts = word.split(/\{\{\w+\}\}/).map((part) => part.replace(/[.*+?^$()|[\]\\]/g, '\\$&'));
  return new RegExp(`^${parts.join('.+')}$`);
}
