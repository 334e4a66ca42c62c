/**
 * The plotting library has a copy of d3-array of its own: what it alone uses of it then comes with the plot, and not
 * with every lesson.
 */
const PLOT = /node_modules.(@observablehq|d3\b)/;

/** The plugin. */
export function ownArrays() {
  return {
    name: 'own-arrays',
    enforce: 'pre',
    async resolveId(source, importer, options) {
      if (source !== 'd3-array' || !PLOT.test(importer ?? '')) return null;
      const found = await this.resolve(source, importer, { ...options, skipSelf: true });
      return found && { ...found, id: `${found.id}?plot` };
    },
  };
}
