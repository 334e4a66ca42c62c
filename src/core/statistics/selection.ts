/**
 * The value at a given rank of a list, without sorting all of it.
 * Units: those of the values.
 * Source: C. A. R. Hoare, Algorithm 65: find, Comm. ACM 4 (1961) 321, from memory.
 */

/** The middle one of three values: a pivot that sorted lists cannot spoil. */
function middleOf(a: number, b: number, c: number): number {
  return Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
}

/**
 * The value with `rank` smaller ones before it (0 is the least), among `from` up to, not including,
 * `to`. Reorders that part so that nothing before the rank is larger and nothing after it smaller.
 * The values must be finite.
 */
export function valueAtRank(
  values: Float64Array,
  rank: number,
  from = 0,
  to = values.length,
): number {
  let low = from;
  let high = to - 1;
  while (low < high) {
    const pivot = middleOf(
      values[low] as number,
      values[(low + high) >> 1] as number,
      values[high] as number,
    );
    let left = low;
    let right = high;
    while (left <= right) {
      while ((values[left] as number) < pivot) left += 1;
      while ((values[right] as number) > pivot) right -= 1;
      if (left <= right) {
        const swapped = values[left] as number;
        values[left] = values[right] as number;
        values[right] = swapped;
        left += 1;
        right -= 1;
      }
    }
    if (rank <= right) high = right;
    else if (rank >= left) low = left;
    else break;
  }
  return values[rank] as number;
}
