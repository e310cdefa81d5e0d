/**
 * What the page may do (W3C Content Security Policy Level 3): run its own files only, speak with where it comes from
 * only, be shown inside no other page. Pictures and fonts of a person's own come as data of the page itself.
 */
export const PAGE_POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "worker-src 'self'",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "font-src 'self' data: blob:",
  "connect-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

/** Only a header can say this. */
export const FRAME_POLICY = "frame-ancestors 'none'";
