/** The modules worked out at build carry, as plain data, what their code gives. */
import { rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { plain, workedOut } from '../../.ci/worked-out.mjs';
import { filesUnder } from './project-files.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const modules = filesUnder('src').filter((path) => path.endsWith('.worked.ts'));

/** The code that a page gets in place of a module, as a module again. */
async function sent(path: string): Promise<Record<string, unknown>> {
  const code = await workedOut().load(path);
  return import(`data:text/javascript,${encodeURIComponent(code ?? '')}`);
}

describe('modules worked out at build', () => {
  it('are there', () => expect(modules.length).toBeGreaterThan(0));

  it.each(modules)('%s sends what its code gives', async (path) => {
    const worked: Record<string, unknown> = await import(join(root, path));
    const rounded: unknown = JSON.parse(JSON.stringify(worked, plain));
    expect({ ...(await sent(join(root, path))) }).toEqual(rounded);
  });

  it('keep ten digits of a number', () =>
    expect(plain('x', 106_800_132.201_041_77)).toBe(106_800_132.2));

  it('leave every other module alone', async () =>
    expect(await workedOut().load(join(root, 'src/core/zero.ts'))).toBeUndefined());

  it.each(['() => 1', 'Number.NaN', '{ deep: [1, 1 / 0] }', 'undefined'])(
    'refuse to send %s',
    async (value) => {
      const path = join(tmpdir(), `refused-${Math.abs(value.length)}-${process.pid}.worked.ts`);
      writeFileSync(path, `export const value = ${value};\n`);
      await expect(workedOut().load(path)).rejects.toThrow(/must be plain finite data/);
      rmSync(path);
    },
  );
});
