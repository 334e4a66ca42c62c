/**
 * The study of coverage: which way finds the zero best, and how often its 95 % interval holds it.
 * Run it by `npm run coverage-study`; it takes about half an hour, prints its tables and writes
 * coverage-table.json beside itself. A number behind the command changes the series per cell.
 * Units: m in the file, µm on the screen.
 */
import { writeFileSync } from 'node:fs';
import { studyTorque, studyTurns, type TorqueCell, torqueTable } from './study.ts';
import type { Tally } from './tally.ts';
import { fullGrid, torqueCases } from './torque-cases.ts';
import { turnsCases } from './turns-cases.ts';

const seriesPerCell = Number(process.argv[2] ?? 2000);
const SEED = 20_000;
const output = new URL('coverage-table.json', import.meta.url);

const asMicrometres = (value: number): string => (value * 1e6).toFixed(1);
const asPercent = (value: number | null): string =>
  value === null ? '-' : `${(100 * value).toFixed(1)} %`;

function printed(tally: Tally) {
  return {
    'mean |bias|': asMicrometres(tally.meanBias),
    'worst bias': asMicrometres(tally.worstBias),
    spread: asMicrometres(tally.spread),
    RMSE: asMicrometres(tally.rmse),
    coverage: asPercent(tally.coverage),
    worst: asPercent(tally.worstCoverage),
    'half-width': tally.halfWidth === null ? '-' : asMicrometres(tally.halfWidth),
    cells: tally.cells,
  };
}

function show(title: string, tallies: Readonly<Record<string, Tally>>): void {
  console.log(`\n${title}`);
  console.table(
    Object.fromEntries(Object.entries(tallies).map(([name, tally]) => [name, printed(tally)])),
  );
}

/** The envelope alone, by a property of the cell. */
function envelopeBy(cells: readonly TorqueCell[], pick: (cell: TorqueCell) => string | number) {
  const keys = [...new Set(cells.map(pick))];
  return Object.fromEntries(
    keys.map((key) => [key, torqueTable(cells, (cell) => pick(cell) === key).envelope]),
  );
}

/** Four significant digits are more than the study can tell. */
function rounded(_: string, value: unknown): unknown {
  return typeof value === 'number' ? Number(value.toPrecision(4)) : value;
}

const cells = studyTorque(torqueCases(fullGrid), seriesPerCell, SEED);
const ways = torqueTable(cells);
const byShape = envelopeBy(cells, ({ shape }) => shape);
const byNoise = envelopeBy(cells, ({ noise }) => asMicrometres(noise));
const byCount = envelopeBy(cells, ({ count }) => count);

const small = { ...fullGrid, counts: [8, 12] };
const fromTenth = torqueTable(
  studyTorque(torqueCases({ ...small, firstLoad: 0.1 }), seriesPerCell, 2 * SEED),
);
const longToes = torqueTable(
  studyTorque(torqueCases({ ...small, deadAt: [0.5, 0.7] }), seriesPerCell, 3 * SEED),
);

const turns = turnsCases([8, 10, 15], fullGrid.noises);
const studyTurnsWhere = (hidden: boolean) =>
  studyTurns(
    turns.filter(({ hidesKnee }) => hidesKnee === hidden),
    seriesPerCell,
    4 * SEED,
  );
const turnsTable = { kneeShows: studyTurnsWhere(false), kneeHidden: studyTurnsWhere(true) };

show(`Zero from torque, ${seriesPerCell} series in each cell, µm`, ways);
show('Envelope by the shape of the toe', byShape);
show('Envelope by the noise of the dial, µm', byNoise);
show('Envelope by the readings in a series', byCount);
show('Series started at a tenth of the top load', fromTenth);
show('Toes longer than the envelope promises', longToes);
for (const [name, { firstReading, bracket, accepted }] of Object.entries(turnsTable)) {
  show(`Zero from turns, ${name}: ${asPercent(accepted)} of the series accepted`, {
    firstReading,
    ...(bracket && { bracket }),
  });
}
const table = { seriesPerCell, ways, byShape, byNoise, byCount, fromTenth, longToes };
writeFileSync(output, `${JSON.stringify({ ...table, turns: turnsTable }, rounded, 2)}\n`);
console.log(`\nWritten to ${output.pathname}`);
