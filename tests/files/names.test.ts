import { describe, expect, it } from 'vitest';
import { plateFileName, plateFileNames } from '../../geometry/files/names.ts';

describe('file names', () => {
  it.each([
    ['Marrow Lane Perry', 'Large', 'Marrow-Lane-Perry-Large-0a1b2c3d.dxf'],
    ['Poiré d’Éloïse & Fils', 'half size', 'Poire-d-Eloise-Fils-half-size-0a1b2c3d.dxf'],
    ['Straße Łódź Ærø', 'x', 'Strasse-Lodz-AEro-x-0a1b2c3d.dxf'],
    ['', '', 'stencil-plate-0a1b2c3d.dxf'],
    ['🍐', '桶', 'stencil-plate-0a1b2c3d.dxf'],
    ['../../etc/passwd', '..\\..', 'etc-passwd-plate-0a1b2c3d.dxf'],
    ['a\u0000b\nc', 'C:', 'a-b-c-C-0a1b2c3d.dxf'],
  ])('%j, %j -> %s', (title, plate, name) => expect(plateFileName(title, plate, '0a1b2c3d', 'dxf')).toBe(name));

  it('stays short', () => {
    expect(plateFileName('M'.repeat(500), 'P'.repeat(60), '0a1b2c3d', 'svg').length).toBeLessThan(140);
  });

  it('gives two plates of one name two names', () => {
    const plates = ['Plate', 'plate', 'Plate', 'Plate 2'].map((name) => ({ name, fingerprint: '0a1b2c3d' }));
    const names = plateFileNames('t', plates, 'dxf').map((name) => name.toLowerCase());
    expect(new Set(names).size).toBe(4);
  });
});
