// The page that only shows a plan, to be put into another by an <iframe>, where no script may run:
//
//   view.html?plan=house.json        a file of the same site, by its address from here
//   view.html#job-1.…                what a link holds behind its #
//   view.html                        a plan that the page around it sends as a message { plan }
//
// and `units=si` behind the ? shows metres and pascals. The page around it hears of what
// came of it by messages: { elbowroom: 'ready' }, 'shown', or 'refused' with message and path.

import './view.js';

// In the light or the dark of the reader's own.
const sheet = new CSSStyleSheet();
sheet.replaceSync('html { background: Canvas; color: CanvasText } body { margin: 8px }');
document.adoptedStyleSheets = [sheet];

const shown = document.querySelector('elbowroom-view');
const wishes = new URLSearchParams(location.search);
if (wishes.has('units')) shown.setAttribute('units', wishes.get('units'));

function fromLink() {
  if (location.hash) shown.setAttribute('link', location.href);
}
addEventListener('hashchange', fromLink);
fromLink();

const file = wishes.get('plan');
if (!location.hash && file !== null) shown.setAttribute('src', file);

if (parent !== window) {
  const tell = (told) => parent.postMessage(told, '*');
  shown.addEventListener('shown', () => tell({ elbowroom: 'shown' }));
  shown.addEventListener('refused', ({ detail }) => {
    tell({ elbowroom: 'refused', message: detail.message, path: detail.path });
  });
  // Only the page around this one: it shows what it likes anyway.
  addEventListener('message', ({ data, source }) => {
    if (source !== parent || data?.plan === undefined) return;
    if (data.units !== undefined) shown.setAttribute('units', String(data.units));
    shown.plan = data.plan;
  });
  tell({ elbowroom: 'ready' });
}
