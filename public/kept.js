// Before anything is drawn: whoever has a job of their own here, or comes with one in the address, is not
// shown the example while the program loads.
try {
  if (localStorage.getItem('elbowroom-kept') || location.hash) document.documentElement.classList.add('kept');
} catch {
  // A browser that keeps nothing has no job either.
}
