/** The letters of a lesson's equations that its text does not name itself. Units: none. Source: definition. */

const LONGEST_LETTER = 3; // characters of a symbol as it stands in the text, such as x₀

/** The quantities that the text writes as a letter, and so names where it does. */
function namedInText(body: string): ReadonlySet<string> {
  const symbols = [...body.matchAll(/<S n="(\w+)">(.*?)<\/S>/g)];
  const letters = symbols.filter(
    ([, , text = '']) => text.replace(/<[^>]*>/g, '').length <= LONGEST_LETTER,
  );
  return new Set(letters.map(([, name = '']) => name));
}

/** For each equation of a lesson, by its TeX: the quantities whose letter it is the first to use, in their order. */
export function lettersToName(body = ''): ReadonlyMap<string, readonly string[]> {
  const told = new Set(namedInText(body));
  const equations = [...body.matchAll(/<Equation tex="([^"]*)"/g)].map(([, tex = '']) => tex);
  return new Map(
    equations.map((tex) => {
      const names = [...tex.matchAll(/\\q\{(\w+)\}/g)].map(([, name = '']) => name);
      const fresh = [...new Set(names)].filter((name) => !told.has(name));
      for (const name of fresh) told.add(name);
      return [tex, fresh];
    }),
  );
}
