import type { Severity } from '../../../../geometry/findings.ts';
import type { Theme } from '../../../barrel/painting/oak.ts';

/** Colours that the canvas needs; the page's own live in its style sheet. */
export interface StagePalette {
  readonly ground: string;
  readonly glow: string;
  readonly ink: string;
  readonly copper: string;
  /** Behind copper lines, so that they stand out on steel and on oak alike. */
  readonly copperHalo: string;
  readonly bridge: string;
  /** Bridges while they are worked on: told from oak and steel at a glance. */
  readonly bridgeWorked: string;
  readonly engraved: string;
  readonly pin: Record<Severity, string>;
  readonly pinText: string;
}

export const PALETTES: Record<Theme, StagePalette> = {
  light: {
    ground: '#f3eee3',
    glow: '#fcf9f3',
    ink: '#3a322a',
    copper: '#9c4a1a',
    copperHalo: 'rgba(255, 250, 242, 0.8)',
    bridge: 'rgba(178, 80, 28, 0.74)',
    bridgeWorked: '#cf4a10',
    engraved: 'rgba(38, 34, 30, 0.62)',
    pin: { stop: '#a3271c', look: '#8a5b00', note: '#3f5566' },
    pinText: '#ffffff',
  },
  dark: {
    ground: '#14100c',
    glow: '#2b2118',
    ink: '#c9bca8',
    copper: '#e39358',
    copperHalo: 'rgba(18, 10, 4, 0.7)',
    bridge: 'rgba(212, 98, 38, 0.84)',
    bridgeWorked: '#f0803c',
    engraved: 'rgba(16, 12, 9, 0.7)',
    pin: { stop: '#c23a2b', look: '#9a6a08', note: '#4d667a' },
    pinText: '#ffffff',
  },
};
