/**
 * Who counts with much of d3-array has a copy of its own, fetched on demand with it: the plotting library, and the
 * histograms of many repeats. What they alone use of it then does not come with every lesson.
 */
const OWN = [
  { name: 'plot', importers: /node_modules.(@observablehq|d3\b)/ },
  { name: 'bins', importers: /src.lessons.[a-z-]+.repeats/ },
];

/** The plugin. */
export function ownArrays() {
  return {
    name: 'own-arrays',
    enforce: 'pre',
    applyToEnvironment: ({ name }) => name === 'client',
    async resolveId(source, importer = '', options) {
      const own = OWN.find(({ importers }) => importers.test(importer));
      if (source !== 'd3-array' || !own) return null;
      const found = await this.resolve(source, importer, { ...options, skipSelf: true });
      return found && { ...found, id: `${found.id}?${own.name}` };
    },
  };
}
