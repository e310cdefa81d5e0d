import type { Triple } from './mesh.ts';

/** From where the barrel is looked at. Degrees; 0 and 0 is straight on. */
export interface Eye {
  /** To the right round the upright. */
  readonly turn: number;
  readonly rise: number;
  /** What is in the middle of the picture. */
  readonly at: Triple;
  /** Half of what must be seen there up and down, mm; sideways so many times as much. */
  readonly reachMm: number;
  readonly wide: number;
}

/** Angle of view of the lens: long, as one photographs things that should look as they are. */
export const LENS_DEG = 26;
const MOST_TURN = 85;
const [LEAST_RISE, MOST_RISE] = [-8, 84];
const [LEAST_ZOOM, MOST_ZOOM] = [0.22, 1.5];

/** The eye led on by so many degrees, never under the floor nor behind the barrel. */
export function turnEye(eye: Eye, turnBy: number, riseBy: number): Eye {
  return {
    ...eye,
    turn: clamp(eye.turn + turnBy, -MOST_TURN, MOST_TURN),
    rise: clamp(eye.rise + riseBy, LEAST_RISE, MOST_RISE),
  };
}

/** Nearer (below 1) or farther, within limits about the reach of the whole. */
export function zoomEye(eye: Eye, by: number, wholeMm: number): Eye {
  return { ...eye, reachMm: clamp(eye.reachMm * by, wholeMm * LEAST_ZOOM, wholeMm * MOST_ZOOM) };
}

/** Between two views, share 0 to 1. */
export function mixEyes(a: Eye, b: Eye, share: number): Eye {
  const mix = (from: number, to: number) => from + (to - from) * share;
  return {
    turn: mix(a.turn, b.turn),
    rise: mix(a.rise, b.rise),
    at: [mix(a.at[0], b.at[0]), mix(a.at[1], b.at[1]), mix(a.at[2], b.at[2])],
    reachMm: mix(a.reachMm, b.reachMm),
    wide: mix(a.wide, b.wide),
  };
}

/** Where the eye stands, mm, for a picture so many times as wide as it is high. */
export function placeEye(eye: Eye, aspect: number): Triple {
  const away = (eye.reachMm / Math.tan(rad(LENS_DEG / 2))) * Math.max(1, eye.wide / aspect);
  const [turn, rise] = [rad(eye.turn), rad(eye.rise)];
  return [
    eye.at[0] + away * Math.sin(turn) * Math.cos(rise),
    eye.at[1] + away * Math.sin(rise),
    eye.at[2] + away * Math.cos(turn) * Math.cos(rise),
  ];
}

/** Half the side of a square picture of all that must be seen, where it is drawn to scale; mm. */
export function pictureHalfMm(eye: Eye): number {
  return eye.reachMm * Math.max(1, eye.wide);
}

/** Nothing is foreshortened: a picture from here is drawn to scale. */
export function isStraight(eye: Eye): boolean {
  return eye.turn === 0 && eye.rise === 0;
}

function clamp(value: number, least: number, most: number): number {
  return Math.min(most, Math.max(least, value));
}

function rad(deg: number): number {
  return (deg * Math.PI) / 180;
}
