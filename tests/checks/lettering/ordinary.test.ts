import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readDesign } from '../../../geometry/design/read-design.ts';
import { codesOf, findingsOf } from './read.ts';

/** Lettering as it is ordered, invented, each a design of its own: none of it is to be found fault with. */
const ORDINARY: readonly (readonly string[])[] = [
  ['MARROW LANE PERRY', 'AGED IN OLD OAK', 'FILLED 14 OCT 2026', 'CASK 27 OF 48'],
  ['GOLDEN WEDDING', 'OTTO & BEATA', '12 JUNE 1977 – 12 JUNE 2027'],
  ['The House of Odile', 'since 2027', 'No. 4'],
  ['Cooper’s Yard', 'Coopers & Sons', 'Est. MCMXXVII'],
  ['LOWER MILL COOPERS', '1927 – 2027', '100 YEARS'],
  ['O’Dell & O’Dare', 'Single Cask', '58.4% vol', '70cl'],
  ['THE OLD ORCHARD', 'BATCH 12.6', 'ABV 6.8 %'],
  ['Happy Birthday May', '50 years young'],
  ['JUNE & APRIL', 'SISTERS’ CIDER'],
  ['McIntosh Farm', 'Mac & Mc', 'Vat 27A'],
  ['Barrel No 1', 'Barrel No 2', 'Barrel No 11'],
  ['Saturday 12 June 2027', '3 p.m.'],
  ['Ye Olde Brew House', 'Rook & Raven', '4th Street'],
  ['H & L', 'XII · VI · MMXXVII'],
  ['The Cooper', 'The Coopers', 'The Copper Still'],
  ['Anna', 'Anne', 'Hannah', 'Hanna'],
  ['225 L', 'FRENCH OAK', 'MEDIUM+ TOAST'],
  ['6\' 2" OF OAK', '24/7'],
  ['IV', 'XIX', 'MIX', 'CIVIC'],
  ['N 51° 30.4′ W 0° 7.6′', '12–14 Mill Lane'],
  ['Weingut am Hang', 'Faß Nr. 7', 'gefüllt am 14. Oktober 2026'],
  ['Zur Hochzeit von Jule und Malte', '12. Juni 2027'],
  ['GOLDENE HOCHZEIT', 'OTTO UND BEATA', '12.6.1977'],
  ['Brennerei Talgrund', 'seit 1927', 'Obstbrand 42 % vol'],
  ['Mutter und Mütter', 'Vater und Väter', 'Bruder & Brüder'],
  ['Winzer', 'Winzerin', 'Winzerinnen', 'WinzerInnen'],
  ['Samstag, den 12. Juni 2027', 'ab 15 Uhr'],
  ['Faß 1', 'Faß 2', 'Jahrgang 2026', '225 l'],
  ['Zum 50. Geburtstag', 'Großvater Hannes', '1. Mai 2027'],
  ['Oma’s Apfelsaft', '’s Fässle', 'Grüß Gott'],
  ['Hoch, hoch, hoch!', 'Hurra hurra'],
  ['Die Küfer vom Unterdorf', 'Küferei', 'Küfer'],
  ['Freiwillige Feuerwehr', '100 Jahre', '1927–2027'],
  ['Baden-Baden', 'Prost 2027'],
  ['Eiche, 24 Monate', 'Abfüllung 3/2027', 'Lot 31 • Juni 2027'],
  ['Keller & Kellner', 'Meister Hansen', 'Jansen'],
  ['Domaine du Chêne', 'Élevé en fût', 'Mis en bouteille le 14 octobre 2026'],
  ['Noces d’or', 'Odile et Aubin', '12 juin 1977'],
  ['Vive les mariés\u00a0!', 'Jeanne & Aubin', 'samedi 12 juin 2027'],
  ['Côte et coteaux', 'Marché du Pêcheur', 'Pomme passée'],
  ['Le Tonnelier', 'La Tonnelière', 'Les Tonneliers'],
  ['1er mai 2027', 'Fête du cidre'],
  ['Brut', '12 % vol', '75 cl', 'Lot L2027'],
  ['«\u00a0À la bonne vôtre\u00a0»', 'Chez Odile'],
  ['Cuvée n° 4', 'Cuvée n° 5', 'An XII'],
  ['Où ? Ou là ?', 'Du blé au bel été'],
  ['Les voisins', 'Les voisines', 'Boulanger', 'Boulangère'],
  ['Tchin tchin', 'Nous nous marions', '20.6.2027'],
  ['Ferme de l’Étang', 'L’Eau vive', 'depuis 1927'],
  ['Bodega del Roble', 'Llenado el 14 de octubre de 2026'],
  ['Bodas de oro', 'Hermanos y hermanas', '12 de junio de 1977'],
  ['¡Feliz cumpleaños, abuelo!', '50 años'],
  ['Sidra natural', 'Barrica nº 7', 'Añada 2026'],
  ['Sábado, 12 de junio de 2027', 'Boda de Lía y Aitor'],
  ['Cómo y como', 'Está esta', 'Más o mas'],
  ['Niño', 'Niña', 'Jardín', 'Jardines'],
  ['1.º premio', '2o premio', 'Siglo XXI'],
  ['Olé olé', 'Muy muy bueno'],
  ['Tonelería del Río', 'Toneleros desde 1927'],
  ['Crianza 24 meses', '13,5 % vol', 'Lote 12-27'],
  ['{name}', 'CASK {cask}', '{date}'],
];

describe('ordinary lettering in four languages', () => {
  it('is sixty designs and more', () => expect(ORDINARY.length).toBeGreaterThanOrEqual(60));
  it.each(ORDINARY)('%s', (...texts) => {
    expect(codesOf(...texts.filter((text) => typeof text === 'string'))).toEqual([]);
  });
});

describe('the designs one can begin with', () => {
  const folder = new URL('../../../web/demo/', import.meta.url);
  it.each(readdirSync(folder))('%s', (name) => {
    const read = readDesign(readFileSync(new URL(name, folder), 'utf8'));
    if ('problem' in read) throw new Error(read.problem);
    expect(findingsOf(read.design)).toEqual([]);
  });
});
