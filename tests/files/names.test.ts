import { describe, expect, it } from 'vitest';
import { HAND_PRINT } from './hand-plate.ts';
import { plateFileName, plateFileNames } from '../../geometry/files/names.ts';

describe('file names', () => {
  it.each([
    ['Marrow Lane Perry', 'Large', 'Marrow-Lane-Perry-Large-0a1b2c3d4e5f6071.dxf'],
    ['Poiré d’Éloïse & Fils', 'half size', 'Poire-d-Eloise-Fils-half-size-0a1b2c3d4e5f6071.dxf'],
    ['Straße Łódź Ærø', 'x', 'Strasse-Lodz-AEro-x-0a1b2c3d4e5f6071.dxf'],
    ['', '', 'stencil-plate-0a1b2c3d4e5f6071.dxf'],
    ['🍐', '桶', 'stencil-plate-0a1b2c3d4e5f6071.dxf'],
    ['../../etc/passwd', '..\\..', 'etc-passwd-plate-0a1b2c3d4e5f6071.dxf'],
    ['a\u0000b\nc', 'C:', 'a-b-c-C-0a1b2c3d4e5f6071.dxf'],
  ])('%j, %j -> %s', (title, plate, name) => expect(plateFileName(title, plate, HAND_PRINT, 'dxf')).toBe(name));

  it('stays short', () => {
    expect(plateFileName('M'.repeat(500), 'P'.repeat(60), HAND_PRINT, 'svg').length).toBeLessThan(150);
  });

  it('gives two plates of one name two names', () => {
    const plates = ['Plate', 'plate', 'Plate', 'Plate 2'].map((name) => ({ name, fingerprint: HAND_PRINT }));
    const names = plateFileNames('t', plates, 'dxf').map((name) => name.toLowerCase());
    expect(new Set(names).size).toBe(4);
  });
});
