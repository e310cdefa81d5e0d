import { mixEyes, type Eye } from './eye.ts';

const GLIDE_MS = 180;

/** Where the eye is now, apart from React's state: a hand that turns the barrel redraws nothing else. */
export interface EyeHolder {
  get(): Eye;
  jump(to: Eye): void;
  /** Moves there in a moment; at once where people want no motion. */
  glide(to: Eye): void;
  subscribe(tell: () => void): () => void;
}

export function createEyeHolder(first: Eye): EyeHolder {
  let eye = first;
  let frame = 0;
  const listeners = new Set<() => void>();
  const put = (to: Eye) => {
    eye = to;
    for (const tell of listeners) tell();
  };
  const stop = () => cancelAnimationFrame(frame);
  return {
    get: () => eye,
    jump(to) {
      stop();
      put(to);
    },
    glide(to) {
      stop();
      if (matchMedia('(prefers-reduced-motion: reduce)').matches) return put(to);
      const [from, start] = [eye, performance.now()];
      const step = (now: number) => {
        const t = Math.min(1, Math.max(0, (now - start) / GLIDE_MS));
        if (t < 1) frame = requestAnimationFrame(step);
        put(t < 1 ? mixEyes(from, to, t * t * (3 - 2 * t)) : to);
      };
      frame = requestAnimationFrame(step);
    },
    subscribe(tell) {
      listeners.add(tell);
      return () => listeners.delete(tell);
    },
  };
}
