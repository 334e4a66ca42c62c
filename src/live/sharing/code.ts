/**
 * A link as a matrix code that a camera reads off the printed card. The library comes when the first code is wanted.
 * Units: modules of the code.
 * Source: ISO/IEC 18004, by the library.
 */

/** A code: its side with the white border, and its dark modules as one path. */
export interface Code {
  readonly size: number;
  readonly path: string;
}

/** The code, why there is none, or that it is not there yet. */
export type CodeState = Code | 'tooLong' | 'failed' | undefined;

const DENSEST = 27; // version: on the smallest paper its modules are a quarter of a millimetre
const BORDER = 4; // modules, as the standard has it

/** The dark modules, each run of a row as one rectangle. */
export function pathOf(rows: readonly (readonly boolean[])[]): string {
  return rows
    .map((row, y) => {
      const runs = row.map((isDark) => (isDark ? '1' : '0')).join('');
      return [...runs.matchAll(/1+/g)]
        .map(({ index, 0: { length } }) => `M${index} ${y}h${length}v1h-${length}z`)
        .join('');
    })
    .join('');
}

/** The code of a link; one beyond what a link or a code may hold has none. */
export async function codeOf(link: string | undefined): Promise<CodeState> {
  const library = await import('uqr').catch(() => undefined);
  if (!library) return 'failed';
  if (link === undefined) return 'tooLong';
  try {
    const options = { ecc: 'L', border: BORDER, maxVersion: DENSEST } as const;
    const { size, data } = library.encode(link, options);
    return { size, path: pathOf(data) };
  } catch {
    return 'tooLong'; // the library's only complaint about a text
  }
}
