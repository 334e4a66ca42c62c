/** What the sheet to take along says of mill, band and rig: what is filled in is printed, the rest is left to the pen. */
import type { JSX } from 'preact';
import { type BoxPath, type ChoicePath, fieldAt } from '../../form/paths.ts';
import { part } from '../kit/part.tsx';
import { Said } from '../kit/Section.tsx';
import type { SheetView } from '../state/view.ts';

const CYLINDER: readonly BoxPath[] = [
  'tensioner.cylinder.pistonDiameter',
  'tensioner.cylinder.rodDiameter',
  'tensioner.cylinder.noLoadPressure',
  'gauge',
  'tensioner.cylinder.gaugeTop',
  'tensioner.cylinder.gaugeClass',
];

function tensionerFacts({ chosen }: SheetView): readonly BoxPath[] {
  if (chosen('tensioner.kind') === 'cylinder') return CYLINDER;
  const thread: readonly BoxPath[] =
    chosen('tensioner.thread.kind') === 'own'
      ? ['tensioner.thread.outsideDiameter', 'tensioner.thread.pitch']
      : ['tensioner.thread.designation'];
  return [...thread, 'tensioner.dragTorque', 'grease', 'wrench'];
}

const factsOf = (sheet: SheetView): readonly BoxPath[] => [
  ...(sheet.chosen('mill.strands') === 'one'
    ? (['mill.stripLength'] as const)
    : (['mill.wheelDiameter1', 'mill.wheelDiameter2'] as const)),
  ...(sheet.text('bandName') ? (['bandName'] as const) : []),
  'band.bodyWidth',
  'band.thickness',
  ...tensionerFacts(sheet),
  'rig.gaugeLength',
  'rig.graduation',
  'rig.travelPerTurn',
  'target.stress',
  'target.makerLimitStress',
  'target.makerLimitWheelForce',
];

/** The label of a box by itself: what it belongs to comes first. */
function labelOf(path: BoxPath): string {
  const { of, label } = fieldAt(path);
  return of ? `${of}: ${label.toLowerCase()}` : label;
}

/** A choice with a box to tick before each answer. */
const Ask = part<{ readonly path: ChoicePath }>(({ path }, sheet) => {
  const field = fieldAt(path);
  const [unsaid, ...answers] = 'options' in field ? Object.entries(field.options) : [];
  const chosen = sheet.chosen(path);
  return (
    <div class="is-wide">
      <dt>{field.label}</dt>
      <dd class="along-ticks">
        {answers.map(([value, label]) => (
          <span key={value}>
            <i class={chosen === value && chosen !== unsaid?.[0] ? 'is-ticked' : ''} /> {label}
          </span>
        ))}
      </dd>
    </div>
  );
});

/** One of the other bands: its name and the sizes of its body. */
const OtherBand = part<{ readonly place: number }>(({ place }) => (
  <span>
    <Said path={`bands.${place}.name`} /> <Said path={`bands.${place}.bodyWidth`} />
    {' × '}
    <Said path={`bands.${place}.thickness`} />
  </span>
));

const OtherBands = part((_, sheet) => (
  <div class="is-wide">
    <dt>Other bands: name, body width × thickness</dt>
    <dd class="along-bands">
      {Array.from({ length: sheet.rows('bands') }, (_, place) => (
        <OtherBand key={place} place={place} />
      ))}
    </dd>
  </div>
));

/** All of them. */
export const Facts = part(
  (_, sheet): JSX.Element => (
    <dl class="along-facts">
      {factsOf(sheet).map((path) => (
        <div key={path}>
          <dt>{labelOf(path)}</dt>
          <dd>
            <Said path={path} />
          </dd>
        </div>
      ))}
      <OtherBands />
      {sheet.chosen('tensioner.kind') === 'screw' && <Ask path="tensioner.collar.kind" />}
      <Ask path="rig.dialRuns" />
    </dl>
  ),
);
