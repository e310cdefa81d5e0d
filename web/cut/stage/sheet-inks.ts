/** Colours of the sheet on the screen, as the page has them just now. */
export interface Inks {
  readonly ground: string;
  readonly skeleton: string;
  readonly plate: string;
  readonly hole: string;
  readonly ink: string;
  readonly soft: string;
  readonly copper: string;
  readonly bad: string;
  readonly paper: string;
}

export function readInks(from: Element): Inks {
  const style = getComputedStyle(from);
  const of = (name: string): string => style.getPropertyValue(name).trim();
  return {
    ground: of('--ground'),
    skeleton: of('--sheet-skeleton'),
    plate: of('--sheet-plate'),
    hole: of('--sheet-hole'),
    ink: of('--sheet-ink'),
    soft: of('--sheet-soft'),
    copper: of('--sheet-copper'),
    bad: of('--sheet-bad'),
    paper: of('--paper'),
  };
}
