// Runs before the first paint: says that script is there and whether a sheet is kept, and shows the unit system chosen last time (or the reader's country's).
(() => {
  const root = document.documentElement;
  root.dataset.script = '';
  let units = null;
  try {
    units = localStorage.getItem('units');
    const open = localStorage.getItem('worksheet-open');
    if (localStorage.getItem(`worksheet.${open}`) !== null) root.dataset.kept = ''; // a sheet will be drawn
  } catch {
    // Storage may be forbidden; then nothing is remembered.
  }
  if (units !== 'metric' && units !== 'us') {
    units = /-(US|LR|MM)$/.test(navigator.language) ? 'us' : 'metric';
  }
  root.dataset.units = units;
})();
