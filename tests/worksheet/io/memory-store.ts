/** A browser's store in memory. */

/** A store in memory; `room` is how many entries it takes. */
export function memoryStore(room = 99): Storage {
  const map = new Map<string, string>();
  return {
    get length() {
      return map.size;
    },
    key: (place) => [...map.keys()][place] ?? null,
    getItem: (key) => map.get(key) ?? null,
    setItem: (key, value) => {
      if (map.size >= room && !map.has(key)) throw new DOMException('full', 'QuotaExceededError');
      map.set(key, value);
    },
    removeItem: (key) => void map.delete(key),
    clear: () => map.clear(),
  };
}
