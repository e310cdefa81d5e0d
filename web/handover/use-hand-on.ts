import type { Design } from '../../geometry/design/schema.ts';
import { usePage } from '../page/page-context.ts';
import { t } from '../words/t.ts';

interface HandedOn {
  /** What became of it, for the person. */
  readonly sentence: string;
  /** The link itself, when the browser did not let the page copy it. */
  readonly byHand?: string;
}

type How = (design: Design) => Promise<HandedOn>;

/** Ways to hand on a design as a link; the packing is loaded only when somebody does. */
export function useHandOn(): { readonly copy: How; readonly share: How | undefined } {
  const { own } = usePage();
  const canShare = typeof (navigator as Partial<Navigator>).share === 'function';
  return {
    copy: (design) => copy(design, own.id()),
    share: canShare ? (design) => share(design, own.id()) : undefined,
  };
}

async function copy(design: Design, home: string): Promise<HandedOn> {
  const { copyText, linkTo } = await import('./link/hand-on.ts');
  const link = linkTo(design, home);
  if ('problem' in link) return { sentence: link.problem };
  if (await copyText(link.url)) return { sentence: t('link.copied', { count: link.url.length }) };
  return { sentence: t('link.notCopied'), byHand: link.url };
}

async function share(design: Design, home: string): Promise<HandedOn> {
  const { linkTo, shareLink } = await import('./link/hand-on.ts');
  const link = linkTo(design, home);
  if ('problem' in link) return { sentence: link.problem };
  return { sentence: (await shareLink(design.title, link.url)) ? t('link.shared') : '' };
}
