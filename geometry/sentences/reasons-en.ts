/**
 * Why a material and a process do not meet, in English: a part of the one table in plate-en.ts, apart because every
 * stock book is made with it.
 */
export const REASONS_EN = {
  aluminiumTorch: 'aluminium softens for good at about 200 °C, and a torch soon warps it',
  brightAluminium: 'bright aluminium throws the beam of a CO2 laser back into the machine',
  filmFlutters: 'thin film flutters under the jet',
  filmLifts: 'thin film lifts off the table under the bit',
  filmTorch: 'it softens at about 80 °C and melts at 255 °C',
  meltsBurns: 'it melts and burns under a laser',
  meltsBrowns: 'it melts, browns and catches fire under a CO2 laser; mill it or cut it by water jet',
  meltsTorch: 'it melts at about 130 °C',
  neverTried: 'nobody here has cut it that way',
  noCurrent: 'plasma only cuts what carries current',
  noFibre: 'the beam of a fibre laser passes through it or sets it on fire instead of cutting it',
  pvcLaser: 'PVC under a laser gives off hydrogen chloride, which is poisonous and eats the machine',
  pvcTorch: 'hot PVC gives off hydrogen chloride, which is poisonous',
  softensTorch: 'it softens at about 145 °C',
  steelRouter: 'steel breaks small router bits',
  waterSwells: 'water swells the layers apart',
  woodTorch: 'it burns: wood chars from about 300 °C',
} as const;
