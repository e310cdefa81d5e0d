/**
 * The proof: what the customer looks at, reads letter by letter and signs before anything is cut.
 *
 * In: what is asked (proof-asked.ts) and the two faces to set it in. Out: the bytes of a tagged PDF, all vector; the same
 * input gives the same bytes on every machine.
 *
 * 1. The cover: whose, what, how it stands, how it will look.
 * 2. The plates to a stated scale; every text, sign by sign.
 * 3. Options to choose from.
 * 4. Price, care, cautions, approval.
 * 5. If wanted, the plates at true size.
 */
import { quoteOfOffer } from '../approval/offer.ts';
import { isAllApproved, offerNow, standingOf } from '../approval/standing.ts';
import { showFingerprint } from '../design/show-fingerprint.ts';
import { paperWords } from '../files/paper/paper-words.ts';
import { PAPERS } from '../files/paper/page-size.ts';
import { oneLine } from '../files/plain-text.ts';
import { drawingHeightMm, drawPlates } from '../files/paper/plate-drawing.ts';
import { createPage, onEveryPage, pageBytes, type PageFonts } from '../files/paper/pdf-page.ts';
import { findRolling } from '../files/paper/rolled-plate.ts';
import { drawTiles, numberTile } from './draw-tiles.ts';
import { footDrawer, type Flow, createFlow, TYPE } from './flow.ts';
import type { ProofAsked } from './proof-asked.ts';
import { drawCover } from './proof-cover.ts';
import { drawLetters, lettersMm } from './proof-letters.ts';
import { drawOptions } from './proof-options.ts';
import { drawApproval, drawCare, drawPrice } from './proof-terms.ts';

/** Of the page's height: so that texts begin on the same page, and end on it where a smaller drawing helps. */
const DRAWING_SHARE = { most: 0.44, least: 0.3 };
const AFTER_DRAWING_MM = 10;

export async function writeProof(asked: ProofAsked, fonts: PageFonts): Promise<Uint8Array> {
  const { design, plates, language } = asked;
  const words = paperWords(asked);
  const fingerprint = plates[0]?.plate.fingerprint ?? '';
  // What was offered or approved counts, whatever the list says today.
  const offer = offerNow(design, fingerprint);
  const quote = (offer && quoteOfOffer(offer)) ?? asked.quote;
  const approved = isAllApproved(standingOf(design, fingerprint));
  const title = oneLine(design.title, 120) || words.say('paper.stencil');
  const subject = words.say('paper.fingerprint', { fingerprint });
  const page = createPage({ title, subject, fonts, size: PAPERS[asked.page], language });
  const flow = createFlow(page, words, `${title}  ·  ${showFingerprint(fingerprint)}`);
  drawCover(flow, { ...asked, ...(quote && { quote }), approved, offer }, title, fingerprint);
  flow.newPage();
  drawDrawing(flow, asked);
  drawLetters(flow, design, plates);
  drawOptions(flow, asked);
  flow.newPage();
  drawNotes(flow, design.order.notes);
  if (quote) drawPrice(flow, quote);
  drawCare(flow, asked);
  drawApproval(flow, asked, fingerprint);
  // Plans and pages at true size follow; these have no room for a foot.
  const bound = page.doc.bufferedPageRange().count;
  if (asked.tiles) {
    for (const planned of plates) {
      const isWanted = asked.tilesOf?.includes(planned.plate.plateId) ?? true;
      if (isWanted && planned.plate.diameterMm > 0) drawTiles(flow, planned, fingerprint);
    }
  }
  const foot = footDrawer(page, words, asked.shop?.name ?? 'Bridgehead', fingerprint);
  onEveryPage(page, (number, of) => (number <= bound ? foot(number, of) : numberTile(flow, number, of)));
  return pageBytes(page);
}

/** What the customer wrote beside the order, for both sides to see that it was read. */
function drawNotes(flow: Flow, notes: string): void {
  const said = oneLine(notes, 2000);
  if (said === '') return;
  flow.heading(flow.words.say('paper.notes'), 12);
  flow.paragraph(said);
  flow.y += 6;
}

function drawDrawing(flow: Flow, { design, plates }: ProofAsked): void {
  const { page, words, left, width } = flow;
  flow.heading(words.say('paperProof.plates'), 80);
  const [most, least] = [page.heightMm * DRAWING_SHARE.most, page.heightMm * DRAWING_SHARE.least];
  const free = flow.bottom - flow.y - AFTER_DRAWING_MM - lettersMm(flow, design, plates);
  const height = drawingHeightMm(plates, width, free >= least ? Math.min(free, most) : most);
  const { scale } = drawPlates(
    page,
    plates,
    { x: left, y: flow.y + 2, width, height },
    {
      words,
      checks: false,
      axisOf: ({ diameterMm }) => findRolling(design, diameterMm)?.axis,
    },
  );
  const stated = words.say('paper.scale', { scale: words.plain(scale) });
  page.line(`${stated}  ·  ${words.say('paper.seenFrom')}`, left, flow.y - 1, width, TYPE.quiet);
  flow.y += height + AFTER_DRAWING_MM;
}
