import type { Design } from '../../../geometry/design/schema.ts';
import { t } from '../../words/t.ts';
import { packDesign } from './pack-design.ts';

/**
 * The address that opens this design wherever this page is served: to work on, or to approve. home: the own design that
 * it is; a design that came by a link keeps the one it is of.
 */
export function linkTo(
  design: Design,
  home: string,
  page: 'design' | 'proof' = 'design',
): { readonly url: string } | { readonly problem: string } {
  const packed = packDesign({ ...design, home: design.home ?? home });
  if ('problem' in packed) return { problem: t('link.tooLong') };
  const search = page === 'design' ? '' : `?page=${page}`;
  return { url: `${location.origin}${location.pathname}${search}${packed.fragment}` };
}

/** False when the browser does not let the page copy. */
export async function copyText(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}

/** Hands the link to the device's own sheet; false when the person thought better of it. */
export async function shareLink(title: string, url: string): Promise<boolean> {
  try {
    await navigator.share({ title, url });
    return true;
  } catch {
    return false;
  }
}
