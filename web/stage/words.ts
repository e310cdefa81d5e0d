/** What the stage says, in English. Hand in others by the `words` prop. */
export interface StageWords {
  readonly stage: string;
  readonly empty: string;
  readonly busy: string;
  readonly zoomIn: string;
  readonly zoomOut: string;
  readonly whole: string;
  readonly keys: string;
  readonly bridgeKeys: string;
  readonly mm: string;
  readonly inch: string;
}

export const STAGE_WORDS: StageWords = {
  stage: 'The plate on the barrel head',
  empty: 'Nothing to cut yet. Type a name, and it appears here.',
  busy: 'Working it out',
  zoomIn: 'Larger',
  zoomOut: 'Smaller',
  whole: 'Show the whole plate',
  keys: 'Plus and minus change the size, arrow keys move the plate, 0 shows all of it.',
  bridgeKeys:
    'Arrow keys move the chosen bridge, with Shift farther. Square brackets turn it, plus and minus change its width, Delete removes it, Escape lets go.',
  mm: 'mm',
  inch: 'in',
};
