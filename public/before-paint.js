// Runs before the first paint: says that script is there, whether a sheet is kept and whether lessons were opened before;
// shows the unit system chosen last time (or the reader's country's), the boxes and sliders of the page with it.
(() => {
  const root = document.documentElement;
  root.dataset.script = '';
  let units = null;
  try {
    units = localStorage.getItem('units');
    const open = localStorage.getItem('worksheet-open');
    if (localStorage.getItem(`worksheet.${open}`) !== null) root.dataset.kept = ''; // a sheet will be drawn
    if (localStorage.getItem('lessons')) root.dataset.leftOff = '';
  } catch {
    // Storage may be forbidden; then nothing is remembered.
  }
  if (units !== 'metric' && units !== 'us') {
    units = /-(US|LR|MM)$/.test(navigator.language) ? 'us' : 'metric';
  }
  root.dataset.units = units;
  if (units !== 'us') return;
  const rewrite = (box) => {
    for (const [name, value] of Object.entries(JSON.parse(box.dataset.us))) {
      box.setAttribute(name, value);
    }
  };
  const seen = new WeakSet();
  const observer = new MutationObserver(() => {
    for (const box of document.querySelectorAll('[data-us]')) {
      if (!seen.has(box)) rewrite(box);
      seen.add(box);
    }
  });
  observer.observe(root, { childList: true, subtree: true });
  addEventListener('DOMContentLoaded', () => observer.disconnect());
})();
