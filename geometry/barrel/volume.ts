/**
 * The four varieties of cask of the old gaugers:
 * spheroid     middle frustum of a spheroid (Oughtred): pi L (2 D^2 + d^2) / 12
 * spindle      middle frustum of a parabolic spindle: as above less 0.4 (D - d)^2 in the bracket
 * paraboloids  two frustums of a paraboloid: pi L (D^2 + d^2) / 8
 * cones        two frustums of a cone: pi L (D^2 + D d + d^2) / 12
 * Formulas as in 19th-century courses of mensuration.
 */
export type CaskVariety = 'spheroid' | 'spindle' | 'paraboloids' | 'cones';

/** Inside volume of a cask, in the cube of the unit given: inside length, bung (largest) and head diameter. */
export function caskVolume(variety: CaskVariety, length: number, bung: number, head: number): number {
  const sixth = (Math.PI * length) / 12;
  switch (variety) {
    case 'spheroid':
      return sixth * (2 * bung * bung + head * head);
    case 'spindle':
      return sixth * (2 * bung * bung + head * head - 0.4 * (bung - head) ** 2);
    case 'paraboloids':
      return sixth * 1.5 * (bung * bung + head * head);
    case 'cones':
      return sixth * (bung * bung + bung * head + head * head);
  }
}
