/** The same seed and the same actions give the same readings: under this Node, under the machine's own, as written down. */
import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { bundledGolden } from './bundled-golden.ts';
import { goldenLooks } from './golden-looks.ts';

const WRITTEN = readFileSync(new URL('./golden-looks.txt', import.meta.url), 'utf8')
  .trimEnd()
  .split('\n');

/** The machine's own Node, if it has one beside the project's. */
function ownNode(): string | undefined {
  const folders = (process.env['PATH'] ?? '').split(delimiter);
  return [...folders, '/usr/bin', '/usr/local/bin']
    .filter((folder) => !folder.includes('node_modules'))
    .map((folder) => join(folder, 'node'))
    .find((program) => existsSync(program));
}

const versionOf = (program: string) =>
  execFileSync(program, ['--version'], { encoding: 'utf8' }).trim();

describe('the looks of fixed mills', () => {
  it('are those that were written down', () => {
    expect(WRITTEN).toHaveLength(42);
    expect(goldenLooks()).toEqual(WRITTEN);
  });
  it('are not all alike', () =>
    expect(
      new Set(WRITTEN.map((line) => line.split(' ').slice(2, 20).join(' '))).size,
    ).toBeGreaterThan(30));

  const other = ownNode();
  it.runIf(other && versionOf(other) !== process.version)(
    'are the same under the machine’s own Node',
    async () => {
      const script = `${await bundledGolden()}; console.log(golden.goldenLooks().join('\\n'));`;
      const said = execFileSync(other as string, ['-'], { input: script, encoding: 'utf8' });
      expect(said.trimEnd().split('\n')).toEqual(WRITTEN);
    },
  );
});
