// The page's only script: starts the program and, should it fail, says so calmly.
//
// The program is dead after a panic, so what a person must still be able to reach
// then (the plan as last saved) is handed to this file beforehand. Five events on
// `window`, all CustomEvents:
//   elbowroom-whole                          every part of the page stands
//   elbowroom-kept   detail { name, text }   the plan as last saved, as a file
//   elbowroom-done   detail text             the kind of a step that was taken
//   elbowroom-panic  detail text             the panic's message
//   elbowroom-stopped                        sent from here once the calm page shows

let kept = null;
let stopped = false;

// The last steps, for a report of the fault: kind and time since the page opened, nothing personal.
const MOST_STEPS = 50;
const steps = [];
addEventListener('elbowroom-done', (event) => {
  if (stopped) return;
  steps.push(`${(performance.now() / 1000).toFixed(1)} s  ${event.detail}`);
  if (steps.length > MOST_STEPS) steps.shift();
});

addEventListener('elbowroom-kept', (event) => {
  if (stopped) return;
  kept = event.detail;
  try {
    // For kept.js.
    localStorage.setItem('elbowroom-kept', 'yes');
  } catch {
    // Then the example is seen for a moment before the job is.
  }
});

addEventListener('elbowroom-panic', (event) => {
  stop('Elbowroom had to stop', 'An error inside the page stopped it. It can go on after a reload.', event.detail);
});

// A trap that is no Rust panic (out of memory, for one) reaches no panic hook.
function stopAfterTrap(problem) {
  if (problem instanceof WebAssembly.RuntimeError) {
    stop('Elbowroom had to stop', 'An error inside the page stopped it. It can go on after a reload.', problem.message);
  }
}
addEventListener('error', (event) => stopAfterTrap(event.error));
addEventListener('unhandledrejection', (event) => stopAfterTrap(event.reason));

function element(name, text) {
  const made = document.createElement(name);
  made.textContent = text;
  return made;
}

function whatWasKept() {
  if (!kept) {
    return [element('p', 'Whatever this browser had saved is untouched, and opens again after a reload. Changes of the last second may be missing.')];
  }
  const link = element('a', `Download ${kept.name}`);
  link.href = URL.createObjectURL(new Blob([kept.text], { type: 'application/json' }));
  link.download = kept.name;
  const line = document.createElement('p');
  line.append(link);
  return [
    element('p', 'The plan as it was last saved. It opens again after a reload, and can be taken away as a file now.'),
    line,
  ];
}

function report(message) {
  const build = document.querySelector('meta[name="elbowroom-build"]')?.content ?? 'not built';
  const text = ['Elbowroom, report of a fault', build, navigator.userAgent, '', String(message ?? 'nothing'), '', 'Last steps:', ...steps, ''].join('\n');
  const link = element('a', 'Download a report of the fault');
  link.href = URL.createObjectURL(new Blob([text], { type: 'text/plain' }));
  link.download = 'elbowroom-fault.txt';
  const line = document.createElement('p');
  line.append(link, ' It holds the message below, the browser\u2019s own name and the kinds of the last steps, and nothing of the plan.');
  return line;
}

function stop(title, explanation, message) {
  // The first report is the cause; later ones are its echoes.
  if (stopped) return;
  stopped = true;

  const heading = element('h1', title);
  heading.tabIndex = -1;
  const reload = element('button', 'Reload the page');
  reload.type = 'button';
  reload.addEventListener('click', () => location.reload());
  const details = document.createElement('details');
  details.append(element('summary', 'What the page reported'), element('pre', String(message ?? 'nothing')));

  const page = document.createElement('main');
  page.className = 'stopped';
  page.append(
    heading,
    element('p', explanation),
    element('h2', 'What was kept'),
    ...whatWasKept(),
    reload,
    report(message),
    details,
  );
  document.body.replaceChildren(page);
  document.title = `${title} (Elbowroom)`;
  heading.focus();
  dispatchEvent(new CustomEvent('elbowroom-stopped'));
}

// The example and its figures are in the page itself. The program is fetched once they are seen, so that
// the two do not share a slow line; a page that nobody looks at has no frames to wait for.
const seen = () => new Promise((then) => {
  if (document.hidden) then();
  else requestAnimationFrame(() => setTimeout(then));
});

// All files that the program's start asks for one after the other, asked for at once.
function fetchAhead() {
  for (const [rel, name, as] of [['modulepreload', 'app.js'], ['modulepreload', '__wasm_split.js'], ['preload', 'app_bg.wasm', 'fetch']]) {
    const link = document.createElement('link');
    link.rel = rel;
    if (as) {
      link.as = as;
      link.crossOrigin = 'anonymous';
    }
    link.href = new URL(name, import.meta.url);
    document.head.append(link);
  }
}

try {
  await seen();
  fetchAhead();
  const { askToKeep, keepForOffline } = await import('./offline.js');
  askToKeep();
  const { default: start } = await import('./app.js');
  // Once the page is whole: what is fetched for later must not be in the way of what is needed now.
  addEventListener('elbowroom-whole', keepForOffline, { once: true });
  await start();
} catch (problem) {
  stop(
    'Elbowroom could not start',
    'The program behind the drawing could not be loaded or run. Check the connection and reload; a browser that is several years old may need an update.',
    problem?.message ?? problem,
  );
}
