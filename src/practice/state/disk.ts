/**
 * The shelf once more, through to the disk: a browser that is killed forgets the last seconds of its quick store. A browser
 * that has no such database goes without.
 * Units: ms.
 */
const [NAME, STORE, KEY] = ['tension-notebook-bench', 'shelf', 'all'];
const LONGEST = 1000; // ms that a page waits for it

const answered = <Value>(asked: IDBRequest<Value>): Promise<Value> =>
  new Promise((resolve, reject) => {
    asked.onsuccess = () => resolve(asked.result);
    asked.onerror = () => reject(asked.error);
  });

function openDatabase(): Promise<IDBDatabase> {
  const asked = indexedDB.open(NAME);
  asked.onupgradeneeded = () => asked.result.createObjectStore(STORE);
  return answered(asked);
}

/** What lies there; nothing where nothing does, or where it takes too long. Never rejects. */
export async function readDisk(): Promise<unknown> {
  const read = async () => {
    const database = await openDatabase();
    const found: unknown = await answered(database.transaction(STORE).objectStore(STORE).get(KEY));
    database.close();
    return found;
  };
  const late = new Promise((resolve) => setTimeout(resolve, LONGEST));
  return Promise.race([read(), late]).catch(() => undefined);
}

let waiting: string | undefined;
let isWriting = false;

async function writeAll(): Promise<void> {
  const database = await openDatabase();
  for (let text = waiting; text !== undefined; text = waiting) {
    waiting = undefined;
    const write = database.transaction(STORE, 'readwrite', { durability: 'strict' });
    const done = new Promise((resolve, reject) => {
      write.oncomplete = resolve;
      write.onabort = reject;
    });
    write.objectStore(STORE).put(text, KEY);
    await done;
  }
  database.close();
}

/** Writes a text there, the newest alone where several wait. */
export function writeDisk(text: string): void {
  waiting = text;
  if (isWriting) return;
  isWriting = true;
  void writeAll()
    .catch(() => undefined)
    .finally(() => {
      isWriting = false;
    });
}
