/** The setting card: one sheet of paper to hang at the mill, readable at arm's length. */
import type { JSX } from 'preact';
import type { Worksheet, WorksheetResults } from '../../core/worksheet.ts';
import { part } from '../kit/part.tsx';
import type { Shown } from '../state/shown.ts';
import { guardSentence } from '../words/guard-words.ts';
import { CardCautions, CardChecks, CardMeans } from './CardFoot.tsx';

interface LineProps {
  readonly name: string;
  readonly value: string;
  readonly big?: boolean;
  readonly hand?: boolean; // something to set, not something felt
}

function Line({ name, value, big = false, hand = false }: LineProps): JSX.Element {
  return (
    <div class={`card-line${big ? ' is-big' : ''}${hand ? ' is-hand' : ''}`}>
      <dt>{name}</dt>
      <dd>{value}</dd>
    </div>
  );
}

function bandLine(results: WorksheetResults, shown: Shown): string {
  if (!results.section.ready) return '';
  const { bodyWidth, thickness } = results.section.operands;
  return `${shown.quantity(bodyWidth, 'length')} body × ${shown.quantity(thickness, 'thickness')}`;
}

/** One line for each way whose stress is known; by its own readings where it has them. */
function wayLines(results: WorksheetResults, shown: Shown): readonly LineProps[] {
  return results.ways.flatMap(({ name, fromTorque, fromReadings }, place) => {
    const isContradicted = !fromReadings.ready && fromReadings.refusal !== undefined;
    const known = fromReadings.ready ? fromReadings : fromTorque;
    if (!known.ready || isContradicted) return [];
    const isForbidden = results.guards.some(
      ({ code, inputs }) => code === 'wayAboveAllowed' && inputs.includes(`ways.${place}`),
    );
    const stress = shown.plusMinus(known.stress, known.expandedUncertainty, 'stress');
    return [{ name: name || `Way ${place + 1}`, value: isForbidden ? 'do not use' : stress }];
  });
}

function otherBandLines(results: WorksheetResults, shown: Shown, target: Worksheet['otherBand']) {
  const { otherBand } = results;
  if (!otherBand.ready || target?.bodyWidth === undefined || target.thickness === undefined)
    return [];
  const size = `${shown.quantity(target.bodyWidth, 'length')} × ${shown.quantity(target.thickness, 'thickness')}`;
  const stress = shown.plusMinus(otherBand.stress, otherBand.expandedUncertainty, 'stress');
  const value = `${shown.quantity(otherBand.torque, 'torque')} for ${stress}`;
  return [{ name: `Other band, ${size}`, value, hand: true }];
}

function settingLines(results: WorksheetResults, shown: Shown): readonly LineProps[] {
  const { setting, expectedStretch } = results;
  if (!setting.ready) return [];
  const stress = shown.plusMinus(setting.stress, setting.expandedUncertainty, 'stress');
  const gauge = expectedStretch.ready
    ? [
        {
          name: `Stretch on ${shown.quantity(expectedStretch.operands.gaugeLength, 'length')}, from the zero of a series`,
          value: shown.quantity(expectedStretch.stretch, 'stretch'),
        },
      ]
    : [];
  return [
    { name: 'Set the torque to', value: shown.quantity(setting.torque, 'torque'), big: true },
    { name: 'Stress in the band, 95 %', value: stress },
    ...gauge,
  ];
}

/** Notes of the sheet that bear on how far the setting can be trusted. */
const ALWAYS_SAID: ReadonlySet<string> = new Set([
  'outsideCommonPractice',
  'bendingNotJudged',
  'beyondReadings',
  'wideInterval',
  'wideUncertainty',
]);

/** Every warning of the sheet and a disagreement, each once: the card must not look surer than the sheet. */
function cardWarnings(results: WorksheetResults, shown: Shown): readonly string[] {
  const { agreement, guards, setting } = results;
  const said = guards
    .filter(
      ({ level, code }) =>
        (level !== 'note' || ALWAYS_SAID.has(code)) &&
        (setting.ready || code !== 'wideUncertainty'),
    )
    .map((guard) => guardSentence(guard, shown));
  const apart = agreement.ready && agreement.verdict !== 'agree';
  return [...new Set(apart ? [...said, 'Theory and measurement do not agree.'] : said)];
}

/** Why the card is empty: stopped by a rail, or not there yet. */
function emptyWords({ setting }: WorksheetResults): string {
  const isStopped = !setting.ready && setting.refusal !== undefined;
  return isStopped
    ? 'No setting is given.'
    : 'No setting yet. The card fills in once part 8 has a torque.';
}

/** The card; it says so while there is no setting to print. */
export const SettingCard = part((_, sheet) => {
  const shown = sheet.shown();
  const results = sheet.results();
  if (!results) return null;
  const lines = settingLines(results, shown);
  const warnings = cardWarnings(results, shown);
  return (
    <section class="card" aria-labelledby="card-title">
      <p class="card-kind">Setting card</p>
      <h2 id="card-title">{sheet.text('label') || 'Mill without a name'}</h2>
      <p class="card-band">{bandLine(results, shown)}</p>
      {warnings.map((warning) => (
        <p class="card-warning" key={warning}>
          {warning}
        </p>
      ))}
      {lines.length === 0 ? (
        <p class="card-empty">{emptyWords(results)}</p>
      ) : (
        <dl class="card-lines">
          {lines.map((line) => (
            <Line key={line.name} {...line} />
          ))}
          {[
            ...wayLines(results, shown),
            ...otherBandLines(results, shown, sheet.worksheet()?.otherBand),
          ].map((line) => (
            <Line key={`also ${line.name}`} {...line} />
          ))}
        </dl>
      )}
      <CardMeans />
      <CardChecks />
      <CardCautions />
    </section>
  );
});
