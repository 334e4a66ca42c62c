/**
 * The size of a thread as it stands in its name, whether or not a list has it.
 * Units: SI out (m).
 * Source: definition: metric names hold diameter and pitch in mm, inch names inches and threads per inch.
 */
import type { ThreadSize } from './form.ts';
import { inch } from './form.ts';
import type { ThreadFamily } from './profile.ts';

/** The size of a thread and the family whose shape it has. */
export interface FamilySize extends ThreadSize {
  readonly family: ThreadFamily;
}

const smallest = 0.004; // m, outside diameter
const largest = 0.1; // m

const METRIC = /^(m|tr)(\d+(?:\.\d+)?)x(\d+(?:\.\d+)?)$/;
const INCH = /^((?:\d+ )?\d+\/\d+|\d*\.?\d+)-(\d+(?:\.\d+)?) (acme|un(?:c|f|s|ef)?)$/;
const REMARK = /^(.*\d(?:[a-h]\b)? ?(?:acme|un(?:c|f|s|ef)?)?)[ ,;.(]+(?!acme\b|un)[a-z]\D*$/;
const ONE_START = /[ ,;(]+1[- ]starts?\b\)?/;
const OTHER_THREAD =
  /stub|buttress|square|round|whit|bs|pipe|gas|fine|extra|p\d|double|two|twin|triple|three|multi|four/;

/** `1 1/8`, `7/8`, `.875` in inches. */
function inches(written: string): number {
  const parts = written.split(' ').map((part) => part.split('/').map(Number));
  return parts.reduce((sum, [over = 0, under = 1]) => sum + over / under, 0);
}

function sized(family: ThreadFamily, majorDiameter: number, pitch: number) {
  const canBe = majorDiameter >= smallest && majorDiameter <= largest && pitch > 0;
  return canBe ? { family, majorDiameter, pitch } : undefined;
}

/**
 * A name in small letters without what is remarked behind the size, such as `, greased`; left as it is where the remark
 * makes it another thread (`stub`, `two starts`).
 */
export function withoutRemark(name: string): string {
  const single = name.replace(ONE_START, '');
  return OTHER_THREAD.test(single) ? single : single.replace(REMARK, '$1');
}

/** The size in a name that is spelled as `tr24x4` or `1 1/8-5 acme`; undefined where it has none that a screw can have. */
export function sizeAsWritten(spelled: string): FamilySize | undefined {
  const [, letters, diameter, pitch] = METRIC.exec(spelled) ?? [];
  if (letters !== undefined)
    return sized(
      letters === 'm' ? 'metric' : 'trapezoidal',
      Number(diameter) / 1e3,
      Number(pitch) / 1e3,
    );
  const [, width, perInch, family] = INCH.exec(spelled) ?? [];
  if (width === undefined) return undefined;
  const major = inches(width) * inch;
  return sized(family === 'acme' ? 'acme' : 'unified', major, inch / Number(perInch));
}
