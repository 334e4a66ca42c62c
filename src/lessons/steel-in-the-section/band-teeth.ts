/** The outline of a band's teeth, drawn from their depth and pitch: a hook tooth with a round gullet. Drawing units. */

const TIP = 0.74; // share of the pitch from gullet to tip
const HOOK = Math.tan(Math.PI / 18); // ten degrees

/** The path along `count` teeth from (x, y) on the gullet line downwards; teeth point to the right. */
export function teethPath(
  x: number,
  y: number,
  depth: number,
  pitch: number,
  count: number,
): string {
  const teeth = Array.from({ length: count }, (_, place) => {
    const start = y + place * pitch;
    const tip = start + TIP * pitch;
    const root = tip - 0.65 * depth * HOOK;
    return [
      `C${x} ${start + 0.12 * pitch} ${x + 0.1 * depth} ${start + 0.2 * pitch} ${x + 0.3 * depth} ${start + 0.32 * pitch}`,
      `L${x + depth} ${tip}`,
      `L${x + 0.35 * depth} ${root}`,
      `C${x + 0.1 * depth} ${root + 0.04 * pitch} ${x} ${start + 0.88 * pitch} ${x} ${start + pitch}`,
    ].join('');
  });
  return `M${x} ${y}${teeth.join('')}`;
}

/** Where the first tip below `y` stands. */
export function firstTip(y: number, pitch: number): number {
  return y + TIP * pitch;
}

/** A wavy line where the band is broken off (convention of ISO 128), from x to x + length at y; as a path's start or a piece of one. */
export function breakWave(x: number, y: number, length: number, isStart = true): string {
  const waves = Math.max(2, Math.round(Math.abs(length) / 60));
  const step = length / waves;
  const rise = Math.sign(length) * 5;
  return `${isStart ? 'M' : 'L'}${x} ${y}${`q${step / 4} ${-rise} ${step / 2} 0t${step / 2} 0`.repeat(waves)}`;
}
