interface Letter {
  /** Absent: whoever sends it fills it in. */
  readonly address?: string | undefined;
  readonly subject: string;
  readonly body: string;
}

/** Mail programs cut off longer addresses: 2,000 is what common ones take (common practice, no standard says a number). */
export const LONGEST_MAILTO = 2000;

/** A mailto address (RFC 6068, lines ended as section 5 asks); undefined when it would be cut off on its way. */
export function mailTo({ address = '', subject, body }: Letter): string | undefined {
  const lines = body.replace(/\r?\n/g, '\r\n');
  const to = encodeURIComponent(address).replaceAll('%40', '@');
  const href = `mailto:${to}?subject=${encodeURIComponent(subject)}&body=${encodeURIComponent(lines)}`;
  return href.length <= LONGEST_MAILTO ? href : undefined;
}
