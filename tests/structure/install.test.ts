/** When the dependencies count as installed: every locked package at its version, other platforms' apart. */
import { describe, expect, it } from 'vitest';
import { holdsAll } from '../../.ci/install.mjs';

const locked = {
  '': { version: '0.1.0' },
  'node_modules/chart': { version: '2.0.0' },
  'node_modules/for-another-platform': { version: '1.0.0', optional: true },
};
const chart = (version: string) => ({ 'node_modules/chart': { version } });

describe('dependencies', () => {
  it('are installed when every locked package is, at its version', () =>
    expect(holdsAll(locked, chart('2.0.0'))).toBe(true));

  it('are not when one is missing', () => expect(holdsAll(locked, {})).toBe(false));

  it('are not when one has another version', () =>
    expect(holdsAll(locked, chart('1.9.9'))).toBe(false));

  it('are not when an optional package that is there has another version', () => {
    const optional = { 'node_modules/for-another-platform': { version: '0.9.0' } };
    expect(holdsAll(locked, { ...chart('2.0.0'), ...optional })).toBe(false);
  });
});
