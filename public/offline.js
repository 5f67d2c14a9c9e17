// Registers the service worker, and tells the page how far it is.
//
// The page reads `data-offline` on its root element and hears of each change by the event
// `elbowroom-offline`:
//   ready    everything that the page needs is kept in this browser
//   waiting  a newer build is kept too, and waits to take over
//   others   it was asked to take over, but other pages are open
// The event `elbowroom-take-over` asks the newer build to take over.

const root = document.documentElement;

function tell(state) {
  if (root.dataset.offline === state) return;
  root.dataset.offline = state;
  dispatchEvent(new CustomEvent('elbowroom-offline'));
}

function watch(registration) {
  const look = () => {
    // The very first worker waits for a moment too, with none before it.
    if (registration.waiting && registration.active) tell('waiting');
    else if (registration.active) tell('ready');
  };
  const follow = (worker) => worker?.addEventListener('statechange', look);
  follow(registration.installing);
  registration.addEventListener('updatefound', () => follow(registration.installing));
  addEventListener('elbowroom-take-over', () => registration.waiting?.postMessage('take over'));
  look();
}

/** Nothing of this is needed for the page to work: where it fails, the page is online only. */
export async function keepForOffline() {
  const { serviceWorker } = navigator;
  if (!serviceWorker) return;
  let isControlled = Boolean(serviceWorker.controller);
  serviceWorker.addEventListener('controllerchange', () => {
    // The first worker takes charge of a page of its own build; any later one was asked for.
    if (isControlled) location.reload();
    isControlled = true;
  });
  serviceWorker.addEventListener('message', ({ data }) => {
    if (data === 'other pages are open') tell('others');
  });
  try {
    watch(await serviceWorker.register('service-worker.js'));
  } catch {
    // Refused, as by a browser in private mode or a page without https.
  }
}

/** Asks once for storage that the browser does not clear by itself, at the first job that is kept. */
export function askToKeep() {
  const ask = () => navigator.storage?.persist?.().catch(() => false);
  addEventListener('elbowroom-kept', ask, { once: true });
}
