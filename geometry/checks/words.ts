import type { DesignElement } from '../design/schema.ts';

/** Millimetres as a sentence says them: one decimal, without a trailing zero. */
export function inMm(value: number): string {
  return `${Number(value.toFixed(1))} mm`;
}

/** What a person would call an element: its text in quotation marks, or the kind of border. */
export function callElement(elements: readonly DesignElement[], id: string): string {
  const element = elements.find((e) => e.id === id);
  if (!element) return 'something';
  if (element.kind === 'border') return `the border (${element.style})`;
  if (element.kind === 'motif') return `the motif (${element.motif})`;
  if (element.kind === 'artwork') return `the drawing "${shortened(element.name)}"`;
  const text = element.text.trim();
  return `"${shortened(text)}"`;
}

function shortened(text: string): string {
  return text.length > 24 ? `${text.slice(0, 22)}…` : text;
}

/** A name at the beginning of a sentence. */
export function sentenceStart(name: string): string {
  return name.charAt(0).toUpperCase() + name.slice(1);
}
