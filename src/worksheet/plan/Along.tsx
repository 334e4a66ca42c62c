/** The sheet to take along: what to measure and where, the cautions, and empty rows at the planned torques. */
import type { JSX } from 'preact';
import { type BoxPath, type ChoicePath, fieldAt } from '../../form/paths.ts';
import { unitLabel } from '../../units/label.ts';
import { fromSi } from '../../units/si-value.ts';
import { SketchCopy } from '../kit/PartSketch.tsx';
import { part } from '../kit/part.tsx';
import { Said } from '../kit/Section.tsx';
import type { Shown } from '../state/shown.ts';
import type { Planned } from './inputs.ts';
import { hasLimit, limitSentence } from './limit.ts';
import { plannerOf } from './planner.ts';
import { plannedOn } from './questions.ts';

const ON_A_PAGE = 2; // series

const SCREW: readonly BoxPath[] = [
  'tensioner.thread.designation',
  'grease',
  'tensioner.dragTorque',
  'wrench',
];

const CYLINDER: readonly BoxPath[] = [
  'tensioner.cylinder.pistonDiameter',
  'tensioner.cylinder.rodDiameter',
  'tensioner.cylinder.noLoadPressure',
  'tensioner.cylinder.gaugeTop',
  'tensioner.cylinder.gaugeClass',
];

const factsOf = (isScrew: boolean): readonly BoxPath[] => [
  'band.bodyWidth',
  'band.thickness',
  ...(isScrew ? SCREW : CYLINDER),
  'rig.gaugeLength',
  'rig.graduation',
  'rig.travelPerTurn',
  'measuredOn',
];

const askedOf = (isScrew: boolean): readonly ChoicePath[] =>
  isScrew ? ['tensioner.collar.kind', 'rig.dialRuns'] : ['rig.dialRuns'];

/** What is filled in already is printed; the rest is left to the pen. */
const Facts = part((_, sheet): JSX.Element => {
  const isScrew = sheet.shown().load.name === 'torque';
  return (
    <dl class="along-facts">
      {factsOf(isScrew).map((path) => (
        <div key={path}>
          <dt>{fieldAt(path).label}</dt>
          <dd>
            <Said path={path} />
          </dd>
        </div>
      ))}
      {askedOf(isScrew).map((path) => (
        <div key={path} class="is-wide">
          <Ask path={path} />
        </div>
      ))}
    </dl>
  );
});

/** A choice with a box to tick before each answer. */
const Ask = part<{ readonly path: ChoicePath }>(({ path }, sheet) => {
  const field = fieldAt(path);
  const [unsaid, ...answers] = 'options' in field ? Object.entries(field.options) : [];
  const chosen = sheet.chosen(path);
  return (
    <>
      <dt>{field.label}</dt>
      <dd class="along-ticks">
        {answers.map(([value, label]) => (
          <span key={value}>
            <i class={chosen === value && chosen !== unsaid?.[0] ? 'is-ticked' : ''} /> {label}
          </span>
        ))}
      </dd>
    </>
  );
});

const Cautions = part((_, sheet): JSX.Element => {
  const { load } = sheet.shown();
  return (
    <ul class="along-cautions">
      <li>
        Lock the mill out, take the key, wait until the wheels are still. Only then touch the band.
      </li>
      <li>
        Gloves and eye protection. Tighten slowly; stand out of the plane of the band. Stop at the
        makers’ limits, whatever is printed here.
      </li>
      <li>
        Always go up, never back. At each step read the {load.name} {load.moving}, then the dial.
        Past it? Write down the {load.name} you reached.
      </li>
      <li>
        Afterwards remove the bar, dial and clamps, count them, and let the tension off as the
        mill’s maker says.
      </li>
    </ul>
  );
});

/** How far to go at most: what is known to be too high, or a line for what the makers allow. */
const Limit = part((_, sheet): JSX.Element | null => {
  const { plan, answerTo } = plannerOf(sheet);
  const sentence = limitSentence(sheet, plan.value && answerTo(plan.value.own));
  if (sentence) return <p class="along-limit">{sentence}</p>;
  if (hasLimit(sheet)) return null;
  return <p class="along-limit">Ask first what the makers of mill and band allow: ____________</p>;
});

interface SeriesProps {
  readonly number: number;
  readonly planned: Planned;
  readonly shown: Shown;
}

/** One series: the planned load of each step, and cells for the pen. */
function Series({ number, planned, shown }: SeriesProps): JSX.Element {
  const { system, load } = shown;
  const rows = Array.from({ length: planned.plan.steps }, (_, row) => planned.torques[row]);
  return (
    <table class="along-series">
      <caption>Series {number}</caption>
      <thead>
        <tr>
          <th scope="col">Set to, {unitLabel(load.name, system)}</th>
          <th scope="col">You read</th>
          <th scope="col">Dial, {unitLabel('stretch', system)}</th>
          <th scope="col">Whole turns</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((torque, row) => (
          <tr key={row}>
            <th scope="row">
              {torque === undefined ? row + 1 : shown.number(fromSi(torque, load.name, system), 3)}
            </th>
            <td />
            <td />
            <td />
          </tr>
        ))}
      </tbody>
    </table>
  );
}

interface PageProps {
  readonly first: number; // series on it
  readonly planned: Planned;
  readonly shown: Shown;
  readonly label: string;
}

function AlongPage({ first, planned, shown, label }: PageProps): JSX.Element {
  const count = Math.min(ON_A_PAGE, planned.plan.series - first + 1);
  return (
    <section class="along-page" aria-label="Sheet to take along">
      <p class="along-kind">
        <b>To take along</b> <span>{label}</span>
      </p>
      {first === 1 && (
        <>
          <div class="along-sketches">
            <SketchCopy id="start" />
            {shown.load.name === 'torque' && <SketchCopy id="tensioner" />}
            <SketchCopy id="rig" />
          </div>
          <Facts />
        </>
      )}
      <Limit />
      <Cautions />
      <div class="along-tables">
        {Array.from({ length: count }, (_, at) => (
          <Series key={at} number={first + at} planned={planned} shown={shown} />
        ))}
      </div>
    </section>
  );
}

/** All pages, two series on each. */
export const Along = part((_, sheet) => {
  const planned = plannedOn(sheet);
  if (planned === undefined || typeof planned === 'string') return null;
  const pages = Array.from(
    { length: Math.ceil(planned.plan.series / ON_A_PAGE) },
    (_, page) => ON_A_PAGE * page + 1,
  );
  return pages.map((first) => (
    <AlongPage
      key={first}
      first={first}
      planned={planned}
      shown={sheet.shown()}
      label={sheet.text('label')}
    />
  ));
});
