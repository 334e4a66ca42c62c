// Runs before the first paint: says that script is there, and shows the unit system chosen last time (or the reader's country's).
(() => {
  const root = document.documentElement;
  root.dataset.script = '';
  let units = null;
  try {
    units = localStorage.getItem('units');
  } catch {
    // Storage may be forbidden; then nothing is remembered.
  }
  if (units !== 'metric' && units !== 'us') {
    units = /-(US|LR|MM)$/.test(navigator.language) ? 'us' : 'metric';
  }
  root.dataset.units = units;
})();
