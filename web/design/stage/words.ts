import { t } from '../../words/t.ts';

/** What the stage says. Hand in others by the `words` prop. */
export interface StageWords {
  readonly stage: string;
  readonly empty: string;
  readonly busy: string;
  readonly zoomIn: string;
  readonly zoomOut: string;
  readonly whole: string;
  readonly keys: string;
  readonly bridgeKeys: string;
  readonly placingKeys: string;
  readonly typeHere: string;
  readonly mm: string;
  readonly inch: string;
}

/** The same in the language chosen. */
export function stageWords(): StageWords {
  return {
    stage: t('stage.canvas.label'),
    empty: t('stage.canvas.empty'),
    busy: t('stage.canvas.busy'),
    zoomIn: t('stage.canvas.zoomIn'),
    zoomOut: t('stage.canvas.zoomOut'),
    whole: t('stage.canvas.whole'),
    keys: t('stage.canvas.keys'),
    bridgeKeys: t('stage.canvas.bridgeKeys'),
    placingKeys: t('placing.keys'),
    typeHere: t('placing.typeHere'),
    mm: t('page.units.mm'),
    inch: t('page.units.inch'),
  };
}
