import { MM_PER_INCH } from '../units.ts';

/** Lengths and other figures as the sheet prints them; a figure that does not exist is a dash. */
export function mmText(value: number | undefined, places = 1): string {
  return value === undefined || !Number.isFinite(value) ? '–' : `${value.toFixed(places)} mm`;
}

export function inchText(mm: number): string {
  return Number.isFinite(mm) ? `${(mm / MM_PER_INCH).toFixed(3)} in` : '–';
}

export function metresText(mm: number): string {
  return Number.isFinite(mm) ? `${(mm / 1000).toFixed(2)} m` : '–';
}

export function areaText(mm2: number): string {
  return Number.isFinite(mm2) ? `${(mm2 / 100).toFixed(1)} cm²` : '–';
}

export function massText(kg: number): string {
  if (!Number.isFinite(kg)) return '–';
  return kg < 1 ? `${(kg * 1000).toFixed(0)} g` : `${kg.toFixed(2)} kg`;
}
