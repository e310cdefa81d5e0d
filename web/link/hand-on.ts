import type { Design } from '../../geometry/design/schema.ts';
import { t } from '../words/t.ts';
import { packDesign } from './pack-design.ts';

/** The address that opens this design anywhere this page is served. */
export function linkTo(design: Design): { readonly url: string } | { readonly problem: string } {
  const packed = packDesign(design);
  if ('problem' in packed) return { problem: t('link.tooLong') };
  return { url: `${location.origin}${location.pathname}${packed.fragment}` };
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
