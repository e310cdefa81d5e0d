import type { PlannedPlate } from '../../geometry/files/paper/plate-drawing.ts';
import { planCuts } from '../../geometry/cutplan/plate/plan-cuts.ts';
import type { Design } from '../../geometry/design/schema.ts';
import type { PageFonts } from '../../geometry/files/paper/pdf-page.ts';
import type { ProofOption } from '../../geometry/proof/proof-asked.ts';
import { writeProof } from '../../geometry/proof/write-proof.ts';
import { provePlan } from '../../geometry/pipeline/prove-plan.ts';
import type { StockBook } from '../../geometry/stock/stock-book.ts';
import type { Key } from '../words/keys.ts';
import { paperSpeak } from '../words/paper-speak.ts';
import type { Made, ProofWish } from './plate-api.ts';

type Make = (design: Design, plateId: string, book: StockBook) => Promise<Made>;

/** The proof of a design whose plates are planned, with the options that it can be chosen among. */
export async function proofBytes(
  design: Design,
  plates: readonly PlannedPlate[],
  { options = [], quote, shop, tiles, page, language }: ProofWish,
  make: Make,
  book: StockBook,
  fonts: PageFonts,
): Promise<{ readonly bytes: Uint8Array } | { readonly problem: Key }> {
  const forms: ProofOption[] = [];
  for (const option of options) {
    const planned: PlannedPlate[] = [];
    for (const { id } of option.design.plates) {
      const made = await make(option.design, id, book);
      if ('problem' in made) return made;
      const plan = planCuts(made.plate);
      planned.push({ plate: provePlan(made.plate, plan), plan });
    }
    forms.push({ ...option, plates: planned });
  }
  const asked = {
    design,
    plates,
    book,
    tiles,
    page,
    language,
    speak: await paperSpeak(language),
    ...(shop && { shop }),
    ...(quote && { quote }),
    ...(forms.length > 0 && { options: forms }),
  };
  return { bytes: await writeProof(asked, fonts) };
}
