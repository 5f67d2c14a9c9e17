// <elbowroom-view>: a plan to look at, its drawing and its totals, on any page.
//
//   <script type="module" src="…/api/view.js"></script>
//   <elbowroom-view src="house.json"></elbowroom-view>
//
// It has the colours and the letters' colour of the page around it; the drawing lies on white paper. Its
// title is a heading of the second level, unless `level` says another.
//
// The plan is given by one of
//   src    the address of its file
//   link   a link that holds the job behind its #
//   plan   a property: an object, the text of a file, or a File that somebody chose
// and `units="si"` shows metres and pascals. Every change of these shows anew. The events `shown` and
// `refused` tell how it went; `refused` has the error as its detail.
//
// It asks nothing more of the page's content security policy than Elbowroom's own page has: no inline
// script or style, and of other origins nothing.

import { view } from './elbowroom.js';

const STYLE = `
  :host { display: block; font-family: system-ui, sans-serif; line-height: 1.45 }
  figure { margin: 0 }
  .title, p, dl, dd { margin: 0 }
  .title { font-size: 1.25rem; font-weight: 600 }
  [hidden] { display: none }
  .paper { margin-block: 8px; padding: 8px; border: 1px solid color-mix(in srgb, currentColor 30%, transparent); background: #ffffff }
  .paper svg { display: block; inline-size: 100%; block-size: auto; max-block-size: 70vh }
  dl { display: grid; grid-template-columns: repeat(auto-fit, minmax(9rem, 1fr)); gap: 8px 16px }
  dt { font-size: 0.875rem }
  .figure { font-size: 1.25rem; font-variant-numeric: tabular-nums }
  .costliest { margin-block-start: 8px }
  details { margin-block-start: 8px }
  summary { min-block-size: 44px; display: list-item; align-content: center }
  .trouble { padding: 8px; border: 2px solid }
`;

/** The most text that a link unfolds to, as the page has it. */
const LARGEST_JOB = 256 << 10;
const NO_JOB = 'The link holds no job that can be read.';

class ElbowroomView extends HTMLElement {
  static observedAttributes = ['src', 'link', 'units', 'level'];

  #plan;

  #asked = 0;

  #parts;

  constructor() {
    super();
    const root = this.attachShadow({ mode: 'open' });
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(STYLE);
    root.adoptedStyleSheets = [sheet];
    const element = (name, className) => Object.assign(document.createElement(name), { className });
    const parts = {
      title: element('div', 'title'),
      paper: element('div', 'paper'),
      totals: element('dl', ''),
      costliest: element('p', 'costliest'),
      trouble: element('p', 'trouble'),
      cautions: element('ul', ''),
      summary: element('summary', ''),
    };
    const figure = document.createElement('figure');
    const more = document.createElement('details');
    more.append(parts.summary, parts.cautions);
    figure.append(parts.title, parts.paper, parts.totals, parts.costliest, more);
    parts.trouble.setAttribute('role', 'alert');
    root.append(parts.trouble, figure);
    figure.hidden = true;
    parts.trouble.hidden = true;
    this.#parts = { ...parts, figure };
  }

  get plan() {
    return this.#plan;
  }

  set plan(plan) {
    this.#plan = plan;
    this.#show();
  }

  connectedCallback() {
    // A property that was set before this class was known.
    if (Object.hasOwn(this, 'plan')) {
      const { plan } = this;
      delete this.plan;
      this.#plan = plan;
    }
    this.#show();
  }

  attributeChangedCallback() {
    if (this.isConnected) this.#show();
  }

  async #show() {
    if (!this.isConnected) return;
    // A slow file must not take the place of what was asked for after it.
    this.#asked += 1;
    const own = this.#asked;
    try {
      const plan = await this.#given();
      if (own !== this.#asked || plan === undefined) return;
      this.#draw(view(plan, { units: this.getAttribute('units') ?? 'us' }));
      this.dispatchEvent(new CustomEvent('shown'));
    } catch (problem) {
      if (own !== this.#asked) return;
      const { figure, trouble } = this.#parts;
      figure.hidden = true;
      trouble.hidden = false;
      trouble.textContent = problem.message;
      this.dispatchEvent(new CustomEvent('refused', { detail: problem }));
    }
  }

  /** The plan as it is, or as text. */
  async #given() {
    if (this.#plan !== undefined) return this.#plan instanceof Blob ? this.#plan.text() : this.#plan;
    const link = this.getAttribute('link');
    if (link !== null) return unfolded(link);
    const address = this.getAttribute('src');
    if (address === null) return undefined;
    const response = await fetch(new URL(address, document.baseURI));
    if (!response.ok) throw new Error(`${address}: ${response.status}`);
    return response.text();
  }

  #draw({ title, drawing, run, totals, costliest, cautions_name: heading, cautions }) {
    const parts = this.#parts;
    parts.title.textContent = title;
    parts.title.hidden = title === '';
    parts.title.setAttribute('role', 'heading');
    parts.title.setAttribute('aria-level', this.getAttribute('level') ?? '2');
    // Read as a file of its own, not as markup of this page: it can hold no script that runs.
    const svg = new DOMParser().parseFromString(drawing, 'image/svg+xml').documentElement;
    svg.removeAttribute('width');
    svg.removeAttribute('height');
    svg.setAttribute('role', 'img');
    svg.setAttribute('aria-label', run);
    parts.paper.replaceChildren(document.importNode(svg, true));
    parts.totals.replaceChildren(...totals.map(({ name, figure, against }) => {
      const total = document.createElement('div');
      const [term, value, beside] = ['dt', 'dd', 'dd'].map((kind) => document.createElement(kind));
      term.textContent = name;
      value.textContent = figure;
      value.className = 'figure';
      beside.textContent = against;
      total.append(term, value, ...(against ? [beside] : []));
      return total;
    }));
    parts.costliest.textContent = costliest;
    parts.summary.textContent = heading;
    parts.cautions.replaceChildren(...cautions.map((caution) => {
      const line = document.createElement('li');
      line.textContent = caution;
      return line;
    }));
    parts.trouble.hidden = true;
    parts.figure.hidden = false;
  }
}

/** The text of the job that a link holds: `job-1.`, then its file, packed (RFC 1950), in the letters of
 * base64url (RFC 4648, section 5). */
export async function unfolded(link) {
  const [, letters] = link.match(/#job-1\.([A-Za-z0-9_-]+)$/) ?? [];
  if (!letters) throw new Error(NO_JOB);
  try {
    const bytes = Uint8Array.from(atob(letters.replaceAll('-', '+').replaceAll('_', '/')), (letter) => letter.charCodeAt(0));
    const reader = new Blob([bytes]).stream().pipeThrough(new DecompressionStream('deflate')).getReader();
    const chunks = [];
    let length = 0;
    for (let { done, value } = await reader.read(); !done; { done, value } = await reader.read()) {
      length += value.length;
      if (length > LARGEST_JOB) throw new Error(NO_JOB);
      chunks.push(value);
    }
    return await new Blob(chunks).text();
  } catch {
    throw new Error(NO_JOB);
  }
}

customElements.define('elbowroom-view', ElbowroomView);
