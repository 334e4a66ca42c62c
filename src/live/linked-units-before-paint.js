// Before the first paint of a page for teachers: a link that carries units shows the page in them. The reader's own choice stays
// what it is for every other page.
(() => {
  const units = new URLSearchParams(location.hash.slice(1)).get('units');
  if (units === 'metric' || units === 'us') document.documentElement.dataset.units = units;
})();
