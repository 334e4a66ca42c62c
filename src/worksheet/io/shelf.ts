/**
 * The shelf on which this browser keeps the sheets: one entry of its local storage each. Storage may be forbidden,
 * full, or written to by others; whatever happens is told and nothing throws.
 */

const PREFIX = 'worksheet.';
const OPEN = 'worksheet-open';

/** A sheet on the shelf, as it lies there: not looked into yet; what is no JSON is the text itself. */
export interface ShelfEntry {
  readonly id: string;
  readonly value: unknown;
}

/** Where sheets are kept; `getStore` throws where the browser forbids it. */
export class Shelf {
  private readonly getStore: () => Storage;

  constructor(getStore: () => Storage = () => localStorage) {
    this.getStore = getStore;
  }

  /** A name for a new sheet. */
  newId(): string {
    const [high = 0, low = 0] = crypto.getRandomValues(new Uint32Array(2));
    return high.toString(36) + low.toString(36);
  }

  /** Everything that is kept; empty where nothing is or storage is forbidden. */
  entries(): readonly ShelfEntry[] {
    return this.attempt(() => {
      const store = this.getStore();
      const keys = Array.from({ length: store.length }, (_, i) => store.key(i) ?? '');
      return keys
        .filter((key) => key.startsWith(PREFIX))
        .sort()
        .map((key) => ({ id: key.slice(PREFIX.length), value: parsed(store.getItem(key)) }));
    }, []);
  }

  /** The sheet that was open last. */
  openId(): string | undefined {
    return this.attempt(() => this.getStore().getItem(OPEN) ?? undefined, undefined);
  }

  /** Remembers which sheet is open. */
  setOpen(id: string): void {
    this.attempt(() => this.getStore().setItem(OPEN, id), undefined);
  }

  /** Keeps a sheet; false where the browser would not. */
  keep(id: string, value: unknown): boolean {
    return this.attempt(() => {
      this.getStore().setItem(PREFIX + id, JSON.stringify(value));
      return true;
    }, false);
  }

  /** Takes a sheet off the shelf. */
  remove(id: string): void {
    this.attempt(() => this.getStore().removeItem(PREFIX + id), undefined);
  }

  /** The sheet's id in a storage event of another tab, if it is about a sheet. */
  idOfKey(key: string | null): string | undefined {
    return key?.startsWith(PREFIX) ? key.slice(PREFIX.length) : undefined;
  }

  private attempt<Value>(action: () => Value, otherwise: Value): Value {
    try {
      return action();
    } catch {
      return otherwise;
    }
  }
}

function parsed(text: string | null): unknown {
  try {
    return JSON.parse(text ?? '');
  } catch {
    return text ?? '';
  }
}
