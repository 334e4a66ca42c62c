/**
 * Laws are tried on drawn cases, the same ones each time. `DRAWS=2 npx vitest …` tries others.
 */
import fc from 'fast-check';

fc.configureGlobal({ seed: Number(process.env['DRAWS'] ?? 1) });
