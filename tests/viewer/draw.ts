import type { Layer, Mark } from './layer.ts';

const SVG = 'http://www.w3.org/2000/svg';

/** A part of the plate, mm, y up. */
export interface View {
  readonly x: number;
  readonly y: number;
  readonly widthMm: number;
}

/** Fills the picture with the layers shown, the later over the earlier; colours and widths are viewer.css's. */
export function drawLayers(svg: SVGSVGElement, layers: readonly Layer[]): void {
  svg.replaceChildren(...layers.map(({ id, marks }) => groupOf(`layer ${id}`, marks)));
}

/** One group more over all: what is lit. */
export function light(svg: SVGSVGElement, marks: readonly Mark[]): void {
  svg.querySelector('.lit')?.remove();
  if (marks.length > 0) svg.append(groupOf('lit', marks));
}

/** Shows this part of the plate, whatever the form of the window: its middle and its width. */
export function look(svg: SVGSVGElement, { x, y, widthMm }: View): void {
  const { clientWidth, clientHeight } = svg;
  const heightMm = (widthMm * clientHeight) / Math.max(clientWidth, 1);
  svg.setAttribute('viewBox', `${x - widthMm / 2} ${-y - heightMm / 2} ${widthMm} ${heightMm}`);
  // Numbers and dots keep their size on the screen.
  svg.style.setProperty('--px', `${widthMm / Math.max(clientWidth, 1)}px`);
}

/** Wheel and drag; `to` is told of every move. */
export function followHand(svg: SVGSVGElement, view: () => View, to: (view: View) => void): void {
  svg.addEventListener('wheel', (event) => {
    event.preventDefault();
    const { x, y, widthMm } = view();
    const factor = 1.0015 ** event.deltaY;
    const [dx, dy] = offCentre(svg, event, widthMm);
    to({ x: x + dx * (1 - factor), y: y + dy * (1 - factor), widthMm: widthMm * factor });
  });
  svg.addEventListener('pointerdown', (down) => {
    const from = view();
    svg.setPointerCapture(down.pointerId);
    const [x0, y0] = offCentre(svg, down, from.widthMm);
    svg.onpointermove = (event) => {
      const [x1, y1] = offCentre(svg, event, from.widthMm);
      to({ ...from, x: from.x - (x1 - x0), y: from.y - (y1 - y0) });
    };
    svg.onpointerup = () => (svg.onpointermove = null);
  });
}

/** From the middle of the picture, mm, y up. */
function offCentre(svg: SVGSVGElement, { clientX, clientY }: MouseEvent, widthMm: number): [number, number] {
  const box = svg.getBoundingClientRect();
  const perPx = widthMm / Math.max(box.width, 1);
  return [(clientX - box.x - box.width / 2) * perPx, -(clientY - box.y - box.height / 2) * perPx];
}

function groupOf(name: string, marks: readonly Mark[]): SVGGElement {
  const group = document.createElementNS(SVG, 'g');
  group.setAttribute('class', name);
  group.append(...marks.map(elementOf));
  return group;
}

function elementOf(mark: Mark): SVGElement {
  const element = document.createElementNS(SVG, TAGS[mark.kind]);
  element.setAttribute('class', mark.kind);
  if ('path' in mark) element.setAttribute('d', mark.path);
  else {
    const [x, y] = mark.kind === 'dot' ? ['cx', 'cy'] : ['x', 'y'];
    element.setAttribute(x, `${mark.at.x}`);
    element.setAttribute(y, `${-mark.at.y}`);
    if (mark.kind === 'text') element.textContent = mark.text;
  }
  const title = document.createElementNS(SVG, 'title');
  title.textContent = mark.says;
  element.append(title);
  return element;
}

const TAGS = { area: 'path', line: 'path', dot: 'circle', text: 'text' } as const;
