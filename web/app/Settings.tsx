import { Moon, Scale, Settings as SettingsSign, Sun, SunMoon } from 'lucide-react';
import type { ThemeChoice, Unit } from '../words/preferences.ts';
import { Button } from '../ui/Button.tsx';
import { Choice } from '../ui/fields/Choice.tsx';
import { Drop } from '../ui/Drop.tsx';
import { t } from '../words/t.ts';
import { LanguageChoice } from './LanguageChoice.tsx';
import { usePage, useUi } from '../page/page-context.ts';
import css from './Settings.module.css';
import { useCompact } from './use-compact.ts';

const NEXT_THEME: Record<ThemeChoice, ThemeChoice> = { auto: 'light', light: 'dark', dark: 'auto' };
const THEME_SIGNS = { auto: SunMoon, light: Sun, dark: Moon };

/** Units, language, light and the licences of what it is built with: side by side, or on a phone behind one sign. */
export function Settings() {
  const { ui } = usePage();
  const unit = useUi((s) => s.unit);
  const theme = useUi((s) => s.theme);
  const compact = useCompact();
  const ThemeSign = THEME_SIGNS[theme];
  const themeWords = t('page.top.lightButton', { now: t(`page.top.light.${theme}`) });
  const all = (
    <>
      <Choice<Unit>
        legend={t('page.top.units')}
        quiet={!compact}
        value={unit}
        options={{ mm: t('page.unitNames.mm'), inch: t('page.unitNames.inch') }}
        onChange={(to) => ui.getState().set({ unit: to })}
      />
      <LanguageChoice />
      <Button
        kind={compact ? 'plain' : 'icon'}
        aria-label={themeWords}
        title={themeWords}
        onClick={() => ui.getState().set({ theme: NEXT_THEME[theme] })}
      >
        <ThemeSign size={20} aria-hidden />
        {compact && t(`page.top.light.${theme}`)}
      </Button>
      <a
        href="./licences.txt"
        target="_blank"
        rel="noreferrer"
        className={compact ? css.line : css.sign}
        aria-label={t('page.top.licences')}
        title={t('page.top.licences')}
      >
        <Scale size={20} aria-hidden />
        {compact && t('page.top.licences')}
      </a>
    </>
  );
  if (!compact) return all;
  return (
    <Drop side="right" id="settings" label={t('page.top.settings')} face={<SettingsSign size={20} aria-hidden />}>
      <div className={css.list}>{all}</div>
    </Drop>
  );
}
