/** The short name of the source of each case, by the beginning of the case's id. */

const NAMES: readonly (readonly [beginning: string, source: string])[] = [
  ['strd-', 'NIST Statistical Reference Datasets'],
  ['nist-handbook', 'NIST/SEMATECH e-Handbook'],
  ['nist-tn1900', 'NIST Technical Note 1900'],
  ['gum-', 'JCGM 100 (GUM)'],
  ['s1-', 'JCGM 101 (GUM supplement 1)'],
  ['york-2004', 'York and others 2004'],
  ['york-equal', 'Kapteyn package documentation'],
  ['shigley-', 'Budynas and Nisbett (Shigley)'],
  ['mott-', 'Mott'],
  ['bhandari-', 'Bhandari'],
  ['jindal-', 'Jindal'],
  ['wentzell-', 'Wentzell'],
  ['hibbeler-8-8', 'Hibbeler and Gupta, Statics and Dynamics'],
  ['hibbeler-4', 'Hibbeler, Mechanics of Materials'],
  ['beer-johnston', 'Beer, Johnston and others'],
  ['housner-', 'Housner and Hudson'],
  ['frictionless-', 'A public engineering page'],
  ['khurmi-', 'Khurmi and Gupta'],
  ['eytelwein-', 'Euler and Eytelwein'],
  ['openstax-', 'OpenStax'],
  ['gere-', 'Gere'],
  ['iso724-', 'ISO 724 and ISO 898-1'],
  ['asme-b1-1', 'ASME B1.1'],
  ['asme-b1-5', 'ASME B1.5'],
  ['iso2904-', 'ISO 2904'],
  ['sp811-', 'NIST Special Publication 811'],
  ['temperature-', 'NIST Special Publication 811'],
  ['en1993-', 'EN 1993-1-1'],
  ['spring-wire', 'A public reliability handbook'],
  ['wood-', 'USDA Wood Handbook'],
  ['fletcher-', 'H. Fletcher 1964'],
  ['tensioned-beam', 'Timoshenko'],
  ['astm-d638', 'ASTM D638'],
  ['jis-', 'JIS B 7503'],
  ['dataplot-', 'NIST Dataplot manual'],
  ['en-constructed', 'ISO/IEC 17043'],
];

/** The short name of a case's source. @throws Error for a case that has none */
export function sourceOf(caseId: string): string {
  const found = NAMES.find(([beginning]) => caseId.startsWith(beginning));
  if (found === undefined) throw new Error(`no source named for ${caseId}`);
  return found[1];
}
