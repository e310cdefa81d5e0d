import { svg } from '../web/artwork/node-window.ts';

/** A shape that must come through: where a case holds it, the import is clean when exactly this is left. */
const SQUARE = '<rect x="10" y="10" width="80" height="80"/>';

/** Where a hostile feature is written of. */
export interface HostileCase {
  readonly name: string;
  readonly source: string;
  readonly file: string;
  /** A refusal by its name, or clean: the square alone is left. */
  readonly ends: string;
}

const OWASP = 'OWASP, Cross Site Scripting (XSS) Filter Evasion Cheat Sheet';
const SCRIPTING = 'W3C SVG 2, chapter 16 (Scripting) and 2.7 (processing modes: no script, no external references)';
const LINKING = 'W3C SVG 2, chapter 15 (Linking) and SVG Integration, referencing modes';
const LAUGHS = 'billion laughs: CVE-2003-1564; CWE-776';
const XXE = 'OWASP, XML External Entity Prevention Cheat Sheet; CWE-611';
const STYLING = 'W3C SVG 2, chapter 6 (Styling), external style sheets';
const HTML = 'WHATWG HTML, 13.2.6 (foreign content) and SVG 2, 12.3 (foreignObject)';
const XML = 'W3C XML 1.0, 2.1 (well-formed documents)';
const USE = 'W3C SVG 2, 5.5 (use) and 5.5.1 (circular references)';
const CWE400 = 'CWE-400, uncontrolled resource consumption';
/** Nobody answers there; a test that watched requests would see it asked for. */
const AWAY = 'http://away.invalid';

const clean = (name: string, source: string, inside: string, attributes?: string): HostileCase => ({
  name,
  source,
  file: svg(inside + SQUARE, attributes),
  ends: 'clean',
});
const refused = (name: string, source: string, file: string, ends: string): HostileCase => ({
  name,
  source,
  file,
  ends,
});

const laughs = Array.from({ length: 9 }, (_, i) => `<!ENTITY l${i + 1} "${`&l${i};`.repeat(10)}">`).join('');
/** Nothing is drawn at the end of them, so that counting shapes does not notice. */
const emptyUses = (levels: number, each: number): string =>
  '<defs><g id="u0"/>' +
  Array.from({ length: levels }, (_, i) => `<g id="u${i + 1}">${`<use href="#u${i}"/>`.repeat(each)}</g>`).join('') +
  `</defs><use href="#u${levels}"/>`;
const ruled = (rules: number, elements: number): string =>
  `<style>${Array.from({ length: rules }, (_, i) => `g g * .c${i % 40}, .a > .b${i % 40} { fill: red }`).join('')}</style>` +
  `<g class="${Array.from({ length: 40 }, (_, i) => `b${i} c${i}`).join(' ')}"/>`.repeat(elements);
const usesOf = (levels: number, each: number): string =>
  '<defs><rect id="u0" width="1" height="1"/>' +
  Array.from({ length: levels }, (_, i) => `<g id="u${i + 1}">${`<use href="#u${i}"/>`.repeat(each)}</g>`).join('') +
  `</defs><use href="#u${levels}"/>`;

export const SVG_CASES: readonly HostileCase[] = [
  clean('script element', OWASP, '<script>globalThis.ran = 1; alert(1)</script>'),
  clean('script in CDATA', OWASP, '<script type="text/ecmascript"><![CDATA[globalThis.ran = 1; alert(1)]]></script>'),
  clean('script from elsewhere', SCRIPTING, `<script href="${AWAY}/a.js"/><script xlink:href="${AWAY}/b.js"/>`),
  clean('script under a prefix', OWASP, '<s:script xmlns:s="http://www.w3.org/2000/svg">globalThis.ran = 1</s:script>'),
  clean('HTML script inside', OWASP, '<script xmlns="http://www.w3.org/1999/xhtml">globalThis.ran = 1; alert(1)</script>'),
  clean('onload on the root', OWASP, '', 'viewBox="0 0 100 100" onload="globalThis.ran = 1; alert(1)"'),
  clean('events on shapes', SCRIPTING, '<g onclick="alert(1)" onmouseover="alert(1)" onfocusin="alert(1)" tabindex="1"/>'),
  clean('event by animation', OWASP, '<g><animate onbegin="globalThis.ran = 1" attributeName="x" dur="1s"/></g>'),
  clean('link set by animation', OWASP, '<a id="x"><set attributeName="href" to="javascript:alert(1)"/></a>'),
  clean('javascript link', OWASP, '<a href="javascript:alert(1)"><g/></a><a xlink:href="java&#x09;script:alert(1)"/>'),
  clean('handler and listener', 'W3C SVG Tiny 1.2, 15.2 (handler)', '<handler type="text/javascript" ev:event="load" xmlns:ev="http://www.w3.org/2001/xml-events">alert(1)</handler>'),
  clean('foreignObject with a page', HTML, `<foreignObject width="9" height="9"><body xmlns="http://www.w3.org/1999/xhtml"><iframe src="${AWAY}"/><img src="${AWAY}/x.png" onerror="alert(1)"/></body></foreignObject>`),
  clean('iframe, object and embed', HTML, `<iframe xmlns="http://www.w3.org/1999/xhtml" src="javascript:alert(1)"/><object xmlns="http://www.w3.org/1999/xhtml" data="${AWAY}"/><embed xmlns="http://www.w3.org/1999/xhtml" src="${AWAY}"/>`),
  clean('picture from elsewhere', LINKING, `<image href="${AWAY}/x.png" width="9" height="9"/><image xlink:href="${AWAY}/y.svg"/>`),
  clean('picture that is a script', OWASP, '<image href="data:image/svg+xml;base64,PHN2ZyBvbmxvYWQ9ImFsZXJ0KDEpIi8+" width="9" height="9"/>'),
  clean('filter that loads', LINKING, `<filter id="f"><feImage href="${AWAY}/x.png"/></filter>`),
  clean('use of another document', LINKING, `<use href="${AWAY}/x.svg#a"/><use xlink:href="other.svg#a"/>`),
  clean('use of a data document', LINKING, '<use href="data:image/svg+xml;base64,PHN2ZyBpZD0iYSIvPg==#a"/>'),
  clean('paint from elsewhere', LINKING, `<g fill="url(${AWAY}/x.svg#g)" stroke="url('${AWAY}/x.svg#h')"/>`),
  clean('style that imports', STYLING, `<style>@import url("${AWAY}/a.css"); @font-face { font-family: a; src: url(${AWAY}/a.woff) }</style>`),
  clean('style that loads', STYLING, `<g style="background: url(${AWAY}/x.png); fill: url(${AWAY}/x.svg#g)"/>`),
  clean('style sheet by instruction', STYLING, `<?xml-stylesheet href="${AWAY}/a.css"?>`),
  clean('transforming style sheet', STYLING, `<?xml-stylesheet type="text/xsl" href="${AWAY}/a.xsl"?>`),
  clean('base changed', LINKING, `<g xml:base="${AWAY}/"><use href="x.svg#a"/></g>`),
  clean('cursor and marker from elsewhere', LINKING, `<g cursor="url(${AWAY}/c.cur)" marker-end="url(${AWAY}/m.svg#m)"/>`),
  clean('audio and video', HTML, `<video xmlns="http://www.w3.org/1999/xhtml" src="${AWAY}" autoplay="1" onerror="alert(1)"/>`),
  clean('names that clobber', 'WHATWG HTML, 7.3.3 (named access on Window)', '<g id="attributes"/><g id="childNodes"/><g id="__proto__"/><use href="#constructor"/>'),
  clean('markup that changes when read again', 'DOMPurify, security goals (mutation XSS)', '<desc><![CDATA[</desc><script>alert(1)</script>]]></desc><title>&lt;img src=x onerror=alert(1)&gt;</title>'),
  clean('use of itself', USE, '<g id="a"><use href="#a"/></g>'),
  clean('uses in a circle', USE, '<g id="a"><use href="#b"/></g><g id="b"><use href="#a"/></g>'),
  clean('numbers beyond measure', CWE400, '<path d="M0 0L1e999 NaN"/><circle r="Infinity"/><g transform="matrix(NaN 0 0 1 0 0)"/>'),
  clean('path of rubbish', 'W3C SVG 2, 9.5.4 (error handling in path data)', '<path d="javascript:alert(1)"/><polygon points="a,b"/>'),
  refused('billion laughs', LAUGHS, `<?xml version="1.0"?><!DOCTYPE svg [<!ENTITY l0 "ha">${laughs}]>${svg('<text>&l9;</text>')}`, 'entities'),
  refused('quadratic blowup', LAUGHS, `<!DOCTYPE svg [<!ENTITY a "${'a'.repeat(9000)}">]>${svg(`<text>${'&a;'.repeat(999)}</text>`)}`, 'entities'),
  refused('entity from a file', XXE, `<!DOCTYPE svg [<!ENTITY x SYSTEM "file:///etc/passwd">]>${svg('<text>&x;</text>')}`, 'entities'),
  refused('parameter entity', XXE, `<!DOCTYPE svg [<!ENTITY % x SYSTEM "${AWAY}/x.dtd"> %x;]>${svg(SQUARE)}`, 'entities'),
  refused('entities after a comment, in small letters', XXE, `<!-- > --><!doctype svg [<!entity x "y">]>${svg(SQUARE)}`, 'entities'),
  { name: 'document type of its own elsewhere', source: XXE, file: `<!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "${AWAY}/svg11.dtd">${svg(SQUARE)}`, ends: 'clean' },
  refused('entity that was never declared', XML, svg(`<text>&lol;</text>${SQUARE}`), 'notWellFormed'),
  refused('uses that multiply', USE, svg(usesOf(9, 10)), 'tooMany'),
  refused('uses that multiply and draw nothing', USE, svg(emptyUses(11, 10) + SQUARE), 'tooMany'),
  refused('uses that multiply, few and deep', USE, svg(emptyUses(12, 4) + SQUARE), 'tooMany'),
  refused('rules times elements', CWE400, svg(ruled(250, 300) + SQUARE), 'tooMany'),
  clean('a comment in a style that begins a million times', CWE400, `<style>${'/*'.repeat(500_000)}</style>`),
  clean('a style without braces', CWE400, `<style>${'a'.repeat(500_000)}</style>`),
  refused('a hundred thousand tags', CWE400, svg('<g/>'.repeat(100_000)), 'tooMany'),
  refused('nested ten thousand deep', CWE400, svg('<g>'.repeat(10_000) + '</g>'.repeat(10_000)), 'tooDeep'),
  refused('six megabytes', CWE400, svg(`<!--${'x'.repeat(6_000_000)}-->${SQUARE}`), 'tooLarge'),
  refused('cut off in a tag', XML, svg(SQUARE).slice(0, -20), 'notWellFormed'),
  refused('null bytes', XML, svg('\u0000<rect width="9" height="9"/>'), 'notWellFormed'),
  refused('a page, not a drawing', HTML, `<html xmlns="http://www.w3.org/1999/xhtml"><body><script>alert(1)</script></body></html>`, 'noSvg'),
  refused('words only', 'W3C SVG 2, 11 (Text)', svg('<text x="9" y="9">Marrow Lane</text>'), 'nothingDrawn'),
]; // prettier-ignore
