/** The tests that a mutation run tries the core against: the core's own, and those of its refusals. */
import config from './vitest.config.ts';

const include = ['tests/core/**/*.test.ts', 'tests/refusals/**/*.test.ts'];

export default { ...config, test: { ...config.test, include } };
