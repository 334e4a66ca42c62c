/**
 * Version 2 of the file, and what its form had chosen before anyone chose: there nothing under the head was preset, a
 * dial that runs backwards, a thickness from a micrometer. Written down here, so that an older sheet gives what it gave.
 * What is none of its names keeps its place.
 * Units: as typed.
 * Source: definition.
 */
import { isParts, type Parts, type Preset } from '../box-by-box.ts';

/** What its form had chosen, by today's names. */
export const PRESET_IN_VERSION_2: Preset = {
  'band.thicknessFrom': 'micrometer',
  'tensioner.friction.kind': 'friction',
  'tensioner.collar.kind': 'none',
  'rig.dialRuns': 'backwards',
};

/** Boxes that have another name since. */
const RENAMED: Readonly<Record<string, string>> = {
  'tensioner.collar.friction': 'tensioner.collar.frictionLow',
};

/** Options that have another name since, by the choice that they belong to. */
const OPTIONS: Readonly<Record<string, Parts>> = {
  'tensioner.collar.kind': { collar: 'washer' },
};

function today(path: string, text: unknown): readonly [path: string, text: unknown] {
  const options = Object.hasOwn(OPTIONS, path) ? OPTIONS[path] : undefined;
  const now = options && Object.hasOwn(options, String(text)) ? options[String(text)] : text;
  return [Object.hasOwn(RENAMED, path) ? (RENAMED[path] ?? path) : path, now];
}

/** What a file of version 2 holds, as version 3 writes it. Never throws. */
export function fromVersion2(found: Parts): Parts {
  const { typed } = found;
  if (!isParts(typed)) return found;
  const texts = Object.entries(typed).map(([path, text]) => today(path, text));
  return { ...found, typed: Object.fromEntries(texts) };
}
