import { Pause, Play, SkipBack, SkipForward, X } from 'lucide-react';
import { useEffect, useMemo } from 'react';
import { IconButton } from '../../ui/IconButton.tsx';
import { formatNumber } from '../../words/say/format-number.ts';
import { t } from '../../words/t.ts';
import { useCutParts, usePlannedSheet, usePlay } from '../state/cut-context.ts';
import { clock } from '../state/clock.ts';
import { fateOf } from './paint-plan.ts';
import text from '../../ui/text.module.css';
import css from './PlayBar.module.css';
import { doneAt, lengthOf, type Beat } from './timeline.ts';

const SPEEDS = [1, 4, 10, 40, 150];

/** The plan as it runs: play, scrub, step from contour to contour. */
export function PlayBar({ beats }: { readonly beats: readonly Beat[] }) {
  const { play } = useCutParts();
  const on = usePlay((s) => s.on);
  const playing = usePlay((s) => s.playing);
  const atS = usePlay((s) => s.atS);
  const speed = usePlay((s) => s.speed);
  const planned = usePlannedSheet();
  const wholeS = lengthOf(beats);
  const set = play.getState().set;

  useEffect(() => {
    if (!playing) return;
    let last = performance.now();
    let frame = requestAnimationFrame(function next(now) {
      const state = play.getState();
      const to = Math.min(wholeS, state.atS + ((now - last) / 1000) * state.speed);
      last = now;
      state.set({ atS: to, playing: to < wholeS });
      frame = requestAnimationFrame(next);
    });
    return () => cancelAnimationFrame(frame);
  }, [playing, play, wholeS]);

  function toggle(): void {
    if (playing) set({ playing: false });
    // whoever wants nothing to move by itself goes from contour to contour
    else if (matchMedia('(prefers-reduced-motion: reduce)').matches) step(1);
    else set({ on: true, playing: true, atS: atS >= wholeS ? 0 : atS });
  }

  function step(by: 1 | -1): void {
    const done = doneAt(beats, atS);
    const to = by === 1 ? beats[Math.min(beats.length - 1, done)]?.endS : (beats[done - 2]?.endS ?? 0);
    set({ on: true, playing: false, atS: to ?? 0 });
  }

  const done = doneAt(beats, atS);
  const fates = useMemo(() => planned && fateOf(planned), [planned]);
  const stands = on && fates ? beats.slice(0, done).filter(({ pass }) => fates.get(pass.id) === 'stands').length : 0;
  return (
    <section className={css.bar} aria-label={t('cut.play.title')}>
      <div className={css.buttons}>
        <IconButton label={t('cut.play.back')} onClick={() => step(-1)} sign={SkipBack} />
        <IconButton className={css.play} label={t(playing ? 'cut.play.pause' : 'cut.play.play')} onClick={toggle}>
          {playing ? <Pause size={20} aria-hidden /> : <Play size={20} aria-hidden />}
        </IconButton>
        <IconButton label={t('cut.play.on')} onClick={() => step(1)} sign={SkipForward} />
      </div>
      <input
        type="range"
        className={css.scrub}
        aria-label={t('cut.play.scrub')}
        aria-valuetext={t('cut.play.at', { at: clock(atS), whole: clock(wholeS) })}
        min={0}
        max={wholeS}
        step={wholeS / 2000}
        value={atS}
        onChange={(e) => set({ on: true, playing: false, atS: Number(e.target.value) })}
      />
      <select
        className={css.speed}
        aria-label={t('cut.play.speed')}
        value={speed}
        onChange={(e) => set({ speed: Number(e.target.value) })}
      >
        {SPEEDS.map((times) => (
          <option key={times} value={times}>
            {formatNumber(times, 0)}×
          </option>
        ))}
      </select>
      <p className={css.says} data-testid="play">
        {t('cut.play.at', { at: clock(atS), whole: clock(wholeS) })}
        {on && ` · ${t('cut.play.done', { done, count: beats.length })}`}
        {stands > 0 && <span className={text.look}> · {t('cut.play.stands', { count: stands })}</span>}
      </p>
      {on && (
        <IconButton label={t('cut.play.close')} onClick={() => set({ on: false, playing: false, atS: 0 })} sign={X} />
      )}
    </section>
  );
}
