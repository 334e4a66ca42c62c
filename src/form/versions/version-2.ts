/**
 * Version 2 of the file, and what its form had chosen before anyone chose: there nothing under the head was preset, a
 * dial that runs backwards and whose whole turns had a column, a thickness from a micrometer. It had one other band,
 * behind a choice; since then that is the first of a list.
 * Written down here, so that an older sheet gives what it gave: no name and no order is taken from the form of today.
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
  'rig.dialWritten': 'handOnly',
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

const OTHER_BAND = 'otherBand.kind';
const BAND_COLUMNS = ['bodyWidth', 'thickness', 'targetStress'];

/** The other band as a table of one row. Without its choice it was hidden, and stays where it was, where no box is. */
function otherBandAsList(found: Parts): Parts {
  const { typed, tables = {} } = found;
  if (!isParts(typed) || !isParts(tables) || typed[OTHER_BAND] !== 'some') return found;
  const places = BAND_COLUMNS.map((column) => `otherBand.${column}`);
  const others = Object.entries(typed).filter(([at]) => at !== OTHER_BAND && !places.includes(at));
  const row = places.map((place) => typed[place] ?? '');
  return {
    ...found,
    typed: Object.fromEntries(others),
    tables: { ...tables, bands: [BAND_COLUMNS, row] },
  };
}

/** What a file of version 2 holds, as version 3 writes it. Never throws. */
export function fromVersion2(file: Parts): Parts {
  const found = otherBandAsList(file);
  const { typed } = found;
  if (!isParts(typed)) return found;
  const texts = Object.entries(typed).map(([path, text]) => today(path, text));
  return { ...found, typed: Object.fromEntries(texts) };
}
