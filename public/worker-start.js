// Starts the worker's program. Create it with { type: 'module' }.
//
// A module worker hears messages while its program is still loading, when nothing
// listens: they are held back here and delivered once the program does listen.

const early = [];
const hold = (event) => {
  early.push(event);
  event.stopImmediatePropagation();
};
addEventListener('message', hold);

try {
  const { default: start } = await import('./worker.js');
  await start();
  removeEventListener('message', hold);
  for (const { data, ports } of early) {
    dispatchEvent(new MessageEvent('message', { data, ports: [...ports] }));
  }
} catch (problem) {
  // Reaches the page as an `error` event of its Worker; a rejection would stay in here.
  reportError(problem);
}
