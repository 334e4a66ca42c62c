/** What arrives for a first visit on a phone before anything is touched, packed as the server of any host packs it. */
import { gzipSync } from 'node:zlib';
import { expect, type Page, type Response } from '@playwright/test';

const FIRST_VISIT = 140_000; // bytes of everything, packed
const PACKED_ALREADY = new Set(['font', 'image']);

/** Bytes that came, packed: of script, and of everything together. */
export interface Arrivals {
  readonly script: number;
  readonly all: number;
}

/** Opens a page by `open` on a phone and weighs everything that came until the line was quiet. */
export async function arrivals(page: Page, open: () => Promise<void>): Promise<Arrivals> {
  await page.setViewportSize({ width: 390, height: 844 });
  const arrived: Promise<readonly [kind: string, bytes: number]>[] = [];
  const weighed = (response: Response) => {
    const kind = response.request().resourceType();
    const isPacked = PACKED_ALREADY.has(kind) && !response.url().endsWith('.svg');
    const weigh = async () => {
      const body = await response.body();
      return [kind, isPacked ? body.length : gzipSync(body, { level: 9 }).length] as const;
    };
    arrived.push(weigh());
  };
  page.on('response', weighed);
  await open();
  await page.waitForLoadState('networkidle');
  page.off('response', weighed);
  const weights = await Promise.all(arrived);
  const sum = (of: readonly (readonly [string, number])[]) =>
    of.reduce((total, [, bytes]) => total + bytes, 0);
  return { script: sum(weights.filter(([kind]) => kind === 'script')), all: sum(weights) };
}

/** Holds what arrived against a limit of script, and against what a first visit may bring in all. */
export function expectLight({ script, all }: Arrivals, limit: number, whole = FIRST_VISIT): void {
  expect(script).toBeGreaterThan(10_000);
  expect(script).toBeLessThanOrEqual(limit);
  expect(all).toBeGreaterThan(script);
  expect(all).toBeLessThanOrEqual(whole);
}
