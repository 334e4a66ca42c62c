/** The id of the box at a path. */
export function idOf(path: string): string {
  return `box-${path.replaceAll('.', '-')}`;
}
