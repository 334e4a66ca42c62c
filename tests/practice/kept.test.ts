/** What is kept of the bench: there and back, checked like anything from outside, and told where nothing is kept. */
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { apply, type Bench, type Command, freshBench } from '../../src/practice/state/bench.ts';
import * as disk from '../../src/practice/state/disk.ts';
import {
  benchFrom,
  keepBench,
  keptBench,
  lastPlace,
  restoreShelf,
} from '../../src/practice/state/kept.ts';

const PLACE = { seed: 7, level: 'toe' } as const;
const COMMANDS: readonly Command[] = [
  { do: 'handle', how: { hands: 'gloved' } },
  { do: 'try', torque: 1.5 },
  { do: 'clamp' },
  { do: 'turn', torque: 4 },
  { do: 'zero' },
  { do: 'write', dial: '6.00' },
  { do: 'turn', torque: 9 },
  { do: 'pluck' },
  { do: 'letOff' },
  { do: 'clamp' },
  { do: 'turn', torque: 5 },
  { do: 'measure' },
  { do: 'type', box: 'answer', text: '110' },
];

const worked = (): Bench => COMMANDS.reduce(apply, freshBench(PLACE.seed, PLACE.level, 'metric'));
const thereAndBack = (bench: unknown) =>
  benchFrom(JSON.parse(JSON.stringify(bench)), PLACE, 'metric');

class FakeStorage {
  readonly #texts = new Map<string, string>();
  isFull = false;
  getItem = (key: string) => this.#texts.get(key) ?? null;
  setItem = (key: string, text: string) => {
    if (this.isFull) throw new Error('full');
    this.#texts.set(key, text);
  };
}

let storage: FakeStorage;
beforeEach(() => {
  storage = new FakeStorage();
  vi.stubGlobal('localStorage', storage);
});
afterEach(() => vi.unstubAllGlobals());

describe('a kept bench', () => {
  it('comes back as it was', () => expect(thereAndBack(worked())).toEqual(worked()));
  it('comes back by its mill, and the last one is known', () => {
    keepBench(worked());
    keepBench(freshBench(8, 'clean', 'us'));
    expect(lastPlace()).toEqual({ seed: 8, level: 'clean' });
    expect(keptBench(PLACE, 'metric')).toEqual(worked());
    expect(keptBench({ seed: 9, level: 'clean' }, 'us')).toEqual(freshBench(9, 'clean', 'us'));
  });
  it('is one for each mill, of the last twelve', () => {
    for (let seed = 0; seed < 20; seed += 1) keepBench(freshBench(seed, 'clean', 'metric'));
    keepBench({ ...freshBench(19, 'clean', 'metric'), isMeasured: true });
    const kept = JSON.parse(storage.getItem('bench') ?? '[]');
    expect(kept).toHaveLength(12);
    expect(keptBench({ seed: 19, level: 'clean' }, 'metric').isMeasured).toBe(true);
    expect(keptBench({ seed: 2, level: 'clean' }, 'metric')).toEqual(
      freshBench(2, 'clean', 'metric'),
    );
  });
  it('is told where the browser keeps nothing', () => {
    expect(keepBench(worked())).toBe(true);
    storage.isFull = true;
    expect(keepBench(worked())).toBe(false);
  });
  it('is none where there is no storage, or nonsense in it', () => {
    vi.stubGlobal('localStorage', undefined);
    expect(lastPlace()).toBeUndefined();
    vi.stubGlobal('localStorage', storage);
    for (const text of ['{', '5', '[[3,4],["x"]]', 'null']) {
      storage.setItem('bench', text);
      expect(lastPlace()).toBeUndefined();
      expect(keptBench(PLACE, 'metric')).toEqual(freshBench(7, 'toe', 'metric'));
    }
  });
});

describe('what was tampered with', () => {
  const tampered = (part: object) => thereAndBack({ ...worked(), ...part });
  it.each([null, 5, 'x', []])('gives a fresh bench: %s', (value) =>
    expect(benchFrom(value, PLACE, 'metric')).toEqual(freshBench(7, 'toe', 'metric')),
  );
  it('loses the series from the first that cannot be read, and the rows on them', () => {
    const [first] = worked().taken;
    expect(tampered({ taken: [first, { clamps: 'glued' }, first] }).taken).toHaveLength(1);
    expect(tampered({ taken: 'many' })).toMatchObject({ taken: [], rows: [], plucks: [] });
  });
  it('loses torques, rows, tries and texts that cannot be', () => {
    const [first] = worked().taken;
    const torques = [4, -1, 'x', null, 1e9, 9];
    expect(tampered({ taken: [{ ...first, torques }] }).taken[0]?.torques).toEqual([4, 9]);
    expect(tampered({ taken: [{ ...first, zeroedAt: 77 }] }).taken[0]?.zeroedAt).toBeUndefined();
    const rows = [
      { series: 0, place: 9, dial: '1' },
      { series: 5, place: 0, dial: '1' },
      { series: 0, place: 1, dial: 5 },
      3,
    ];
    expect(tampered({ rows }).rows).toEqual([]);
    expect(tampered({ tries: [1, 'x'] }).tries).toEqual([1]);
    expect(tampered({ typed: { wrench: 5, answer: 'x'.repeat(500) } }).typed).toMatchObject({
      wrench: '',
      answer: '',
    });
    expect(tampered({ typed: 3, next: 3, system: 3 })).toMatchObject({
      next: { clamps: 'quick', hands: 'bare' },
      system: 'metric',
    });
  });
  it('has its series numbered by their place, each but the last let off', () => {
    const [first] = worked().taken;
    const { taken } = tampered({ taken: [{ ...first, attempt: 99, isReleased: false }, first] });
    expect(taken.map(({ attempt, isReleased }) => [attempt, isReleased])).toEqual([
      [0, true],
      [1, true],
    ]);
  });
});

describe('the shelf on the disk', () => {
  const onDisk = (text: unknown) => vi.spyOn(disk, 'readDisk').mockResolvedValue(text);
  const fresh = (savedAt: number) => [
    'v=1&seed=8&level=clean',
    freshBench(8, 'clean', 'us'),
    savedAt,
  ];
  it('is taken where it is newer, and left where it is older', async () => {
    keepBench(worked());
    onDisk(JSON.stringify([fresh(Date.now() - 5000)]));
    await restoreShelf();
    expect(lastPlace()).toEqual(PLACE);
    onDisk(JSON.stringify([fresh(Date.now() + 5000)]));
    await restoreShelf();
    expect(lastPlace()).toEqual({ seed: 8, level: 'clean' });
  });
  it('is left where it is damaged, missing, or cannot be taken', async () => {
    keepBench(worked());
    for (const text of [undefined, 7, '', '{"', '[[]]', '[null]', '[["v=1&seed=8"]]']) {
      onDisk(text);
      await restoreShelf();
      expect(lastPlace()).toEqual(PLACE);
    }
    onDisk(JSON.stringify([fresh(Date.now() + 5000)]));
    storage.isFull = true;
    await restoreShelf();
    expect(lastPlace()).toEqual(PLACE);
  });
});
