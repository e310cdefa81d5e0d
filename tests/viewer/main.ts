/**
 * The viewer, for development only: any case by its address, each stage's outcome as a layer.
 *
 * 1. The address says which case, plate, layers and part of it (address.ts); a dropped file becomes the fragment of
 *    the address, as a link of the tool itself carries a design.
 * 2. The case becomes a design (cases.ts, a file, a link), the design layers (layers-of.ts).
 * 3. Layers are drawn (draw.ts); every move of the hand is written back into the address.
 */
import { loadFaces } from '../../fonts/browser-faces.ts';
import type { Design } from '../../geometry/design/schema.ts';
import { readDesign } from '../../geometry/design/read-design.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { packDesign } from '../../web/handover/link/pack-design.ts';
import { readLink } from '../../web/handover/link/read-link.ts';
import { withWords } from '../../web/words/t.ts';
import { type Address, readAddress, writeAddress } from './address.ts';
import { CASE_NAMES, designOfCase } from './cases.ts';
import { drawLayers, followHand, light, look, type View } from './draw.ts';
import { LAYERS, type LayerId } from './layer.ts';
import { findingMarks, layersOf, type Looked } from './layers-of.ts';

type Found = { readonly design: Design } | { readonly problem: string };

const DEMO_TEXTS = import.meta.glob<string>('../../web/demo/*.json', { query: '?raw', import: 'default' });

let at: Address = readAddress(location.search, location.hash);
let design: Design | undefined;
let looked: Looked | undefined;

const svg = document.querySelector<SVGSVGElement>('#plate')!;
const part = (id: string) => document.querySelector<HTMLElement>(`#${id}`)!;

async function open(): Promise<void> {
  part('told').textContent = 'Working …';
  const found = await findDesign();
  design = 'design' in found ? found.design : undefined;
  looked = undefined;
  if ('problem' in found) return show([found.problem]);
  const { faces, problems } = await loadFaces(found.design);
  const plate = found.design.plates.find(({ id }) => id === at.plate) ?? found.design.plates[0];
  if (!plate) return show(['The design has no plate.']);
  looked = layersOf(found.design, plate.id, faces, BUILT_IN);
  show([...problems.map(({ problem }) => problem), ...looked.problems]);
}

async function findDesign(): Promise<Found> {
  const demos = await readDemos();
  choices(part('cases'), [...demos.keys(), ...CASE_NAMES.map(({ form }) => form)]);
  if (at.case === '') return readLink(location.hash);
  if (!/^(https?:|\.?\/)/.test(at.case)) return designOfCase(at.case, demos);
  try {
    const answer = await fetch(at.case);
    return answer.ok
      ? readDesign(await answer.text())
      : { problem: `${at.case}: ${answer.status} ${answer.statusText}` };
  } catch (error) {
    return { problem: `${at.case} cannot be fetched: ${String(error)}` };
  }
}

async function readDemos(): Promise<Map<string, Design>> {
  const demos = new Map<string, Design>();
  for (const [path, text] of Object.entries(DEMO_TEXTS)) {
    const read = readDesign(await text());
    if ('design' in read) demos.set(path.replace(/^.*\/|\.json$/g, ''), read.design);
  }
  return demos;
}

function show(problems: readonly string[]): void {
  const { plate, layers } = looked ?? { plate: undefined, layers: [] };
  const made = plate
    ? `${design?.title}: ${plate.name}, ${plate.diameterMm.toFixed(1)} mm, ${plate.verdict}, ${plate.fingerprint}`
    : '';
  part('told').textContent = [made, ...problems].filter(Boolean).join('\n');
  document.querySelector<HTMLInputElement>('#case')!.value = at.case;
  choices(part('plates'), design?.plates.map(({ id }) => id) ?? []);
  part('layers').replaceChildren(
    ...LAYERS.map(({ id, title, from }) => switchOf(id, title, from, layers.find((one) => one.id === id)?.count ?? 0)),
  );
  part('findings').replaceChildren(
    ...(plate?.findings ?? []).map(({ severity, code, sentence }, i) => {
      const button = Object.assign(document.createElement('button'), {
        textContent: `${i + 1} ${severity}: ${sentence}`,
        title: code,
      });
      button.className = severity;
      button.setAttribute('aria-pressed', `${at.finding === i + 1}`);
      button.onclick = () => {
        const { finding, ...rest } = at;
        go(finding === i + 1 ? rest : { ...rest, finding: i + 1 });
      };
      return button;
    }),
  );
  drawLayers(
    svg,
    layers.filter(({ id }) => at.layers.includes(id)),
  );
  const lit = at.finding === undefined ? undefined : plate?.findings[at.finding - 1];
  light(svg, lit && plate ? findingMarks(lit, plate.diameterMm / 2) : []);
  look(svg, view());
  // Whoever waits for the picture (a check with a browser) waits for this.
  document.body.dataset['state'] = plate ? 'shown' : 'refused';
  tell = problems;
}

let tell: readonly string[] = [];

function view(): View {
  if (at.zoom) return at.zoom;
  const across = 1.08 * (looked?.plate.diameterMm ?? 500);
  return { x: 0, y: 0, widthMm: across * Math.max(1, svg.clientWidth / Math.max(svg.clientHeight, 1)) };
}

function go(to: Address): void {
  const other = to.case !== at.case || to.plate !== at.plate;
  at = to;
  history.replaceState(null, '', writeAddress(at) + (at.case === '' ? location.hash : ''));
  if (other) void open();
  else show(tell);
}

function switchOf(id: LayerId, title: string, from: string, count: number): HTMLElement {
  const label = Object.assign(document.createElement('label'), { className: `switch ${id}`, title: from });
  const box = Object.assign(document.createElement('input'), { type: 'checkbox', checked: at.layers.includes(id) });
  box.onchange = () =>
    go({
      ...at,
      layers: LAYERS.map((one) => one.id).filter((one) => (one === id ? box.checked : at.layers.includes(one))),
    });
  const swatch = Object.assign(document.createElement('i'), { className: 'swatch' });
  const counted = Object.assign(document.createElement('output'), { textContent: `${count}` });
  label.append(box, swatch, title, counted);
  return label;
}

function choices(list: HTMLElement, values: readonly string[]): void {
  list.replaceChildren(
    ...values.map((value) => {
      if (list instanceof HTMLDataListElement) return Object.assign(document.createElement('option'), { value });
      const shown = value === (looked?.plate.plateId ?? '');
      const button = Object.assign(document.createElement('button'), { textContent: value });
      button.setAttribute('aria-pressed', `${shown}`);
      button.onclick = () => go(withoutPlace({ ...at, plate: value }));
      return button;
    }),
  );
}

/** Another plate is another place, with other findings. */
function withoutPlace({ zoom: _zoom, finding: _finding, ...rest }: Address): Address {
  return rest;
}

async function take(file: File): Promise<void> {
  const read = readDesign(await file.text());
  if ('problem' in read) return show([read.problem]);
  const packed = packDesign(read.design);
  if ('problem' in packed)
    return show([
      'The design is too large for an address: lay its file beside the page and name it, as in ?case=/tests/viewer/NAME.json.',
    ]);
  location.hash = packed.fragment;
}

followHand(svg, view, (zoom) => go({ ...at, zoom }));
addEventListener('resize', () => look(svg, view()));
addEventListener('hashchange', () => {
  at = withoutPlace({ ...at, case: '', plate: '' });
  history.replaceState(null, '', writeAddress(at) + location.hash);
  void open();
});
document.addEventListener('dragover', (event) => event.preventDefault());
document.addEventListener('drop', (event) => {
  event.preventDefault();
  const file = event.dataTransfer?.files[0];
  if (file) void take(file);
});
part('ask').onsubmit = (event) => {
  event.preventDefault();
  go(withoutPlace({ ...at, case: document.querySelector<HTMLInputElement>('#case')!.value.trim(), plate: '' }));
};
part('whole').onclick = () => {
  const { zoom: _, ...rest } = at;
  go(rest);
};

await withWords(Promise.resolve(), 'work');
await open();
