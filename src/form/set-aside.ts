/**
 * What a sheet brought along that cannot stand on the form: kept beside it as it was found, until the reader has
 * seen it. So many as a reader can look through are kept, the rest is counted.
 * Units: none.
 * Source: definition.
 */

/** Something that could not be read: where it was found, and the text as it was found. */
export interface SetAside {
  readonly place: string;
  readonly text: string;
}

/** What is beside a sheet: what is kept, and how much more there was. */
export interface Aside {
  readonly kept: readonly SetAside[];
  readonly more: number;
}

/** How many were set aside in all. */
export const asideCount = ({ kept, more }: Aside): number => kept.length + more;

const MOST = 300;
const MOST_LETTERS = 100_000; // of all together

/** The text of a value from JSON: as it is, or as JSON where it is no text; undefined where it is too deep to be written. */
export function textOf(value: unknown): string | undefined {
  try {
    return typeof value === 'string' ? value : JSON.stringify(value);
  } catch {
    return undefined;
  }
}

/** Collects what is set aside. Never throws. */
export class AsideCollector {
  private readonly kept: SetAside[] = [];
  private more = 0;
  private letters = 0;

  /** Sets something aside, whole; what is beyond the limits is counted. */
  add(place: string, value: unknown): void {
    const text = this.kept.length < MOST ? textOf(value) : undefined;
    const letters = place.length + (text?.length ?? 0);
    if (text === undefined || this.letters + letters > MOST_LETTERS) this.count(1);
    else {
      this.letters += letters;
      this.kept.push({ place, text });
    }
  }

  /** Counts what is not looked at. */
  count(several: number): void {
    this.more += several;
  }

  /** Whether there is nothing. */
  get isEmpty(): boolean {
    return this.kept.length + this.more === 0;
  }

  /** All of it. */
  all(): Aside {
    return { kept: this.kept, more: this.more };
  }
}
