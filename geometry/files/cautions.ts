import type { Design } from '../design/schema.ts';
import { BUILT_IN } from '../stock/built-in-stock.ts';
import { materialIn, processIn, type StockBook } from '../stock/stock-book.ts';

/**
 * The usual cautions for one stock, in the order of the job. They name where the rules stand rather than giving advice:
 * local codes, data sheets and trained people decide.
 * Sources: 29 CFR 1910.107 (spraying), 1910.138 (hand protection), 1910.252 (hot work), 1910.1026 (chromium VI), NFPA 51B
 * (hot work), NIOSH Pocket Guide npgd0262 (ethanol, flash point 12.8 C).
 */
export function cautionsFor(stock: Design['stock'], book: StockBook = BUILT_IN): string[] {
  const material = materialIn(book, stock.material);
  const process = processIn(book, stock.process);
  const cautions: string[] = [];
  if (process) cautions.push(`${process.name}: ${process.caution}`);
  if (material?.family === 'plastic' && process?.kind === 'laser') {
    cautions.push(
      'Plastic under a laser: ask for the sheet’s data sheet first. PVC and vinyl never; ABS and HDPE burn or give off poison.',
    );
  }
  if (material?.holds?.includes('chromium') && stock.use === 'torch') {
    cautions.push('Hot stainless steel can give off chromium compounds: 29 CFR 1910.1026 sets the limit in air.');
  }
  cautions.push('Cut edges are sharp: deburr, and handle with cut-resistant gloves (29 CFR 1910.138).');
  if (stock.use === 'torch') {
    cautions.push(
      'Torch: never near spirit, its vapour or a cask that held it; an empty cask may hold flammable vapour (ethanol flashes at 12.8 °C, NIOSH Pocket Guide).',
      'Hot work: what burns is moved, guarded or watched within 35 ft (10.7 m), and a fire watch stays at least half an hour after (29 CFR 1910.252; NFPA 51B may ask for longer).',
      'Paint or solvent on the wood must be dry and gone before a flame comes near. The plate stays hot: heat gloves or tongs.',
    );
  } else {
    cautions.push(
      'Spray paint: enough moving air, no flame or spark near (29 CFR 1910.107), and what the paint’s own data sheet asks for. Not for the torch.',
    );
  }
  cautions.push('Local codes and licensed or trained people come before anything on this sheet.');
  return cautions;
}
