/**
 * The axis of the day under its strips, the hours that matter drawn through all of it, and what to do at each.
 * Units: drawing units.
 */
import { NAMED } from './hours.ts';
import { changeScale, type DayLayout, EVENING, FURTHEST, timeScale } from './layout.ts';

const MARKS = [
  { at: NAMED.start, text: 'check cold', beside: 0 },
  { at: NAMED.lunch, text: 'check warm', beside: 4 },
  { at: NAMED.stop, text: 'let off', beside: 4 },
] as const;

const CLOCK = [
  { at: NAMED.start, words: ['7 am', 'cold start'], anchor: 'start' },
  { at: NAMED.lunch, words: ['noon', 'lunch'], anchor: 'middle' },
  { at: NAMED.stop, words: ['5 pm', 'evening'], anchor: 'middle' },
  { at: NAMED.frost, words: ['4 am', 'frost'], anchor: 'middle' },
] as const;

interface PartProps {
  readonly layout: DayLayout;
}

/** What to do, beside a line through temperatures and tensions. */
function Mark({ mark, layout }: PartProps & { readonly mark: (typeof MARKS)[number] }) {
  const { marks, top, strips } = layout;
  const { screw, spring, oil } = strips;
  const x = timeScale(layout)(mark.at);
  const y = changeScale(layout, screw);
  const through = [spring, oil].map(({ setting }) => `M${x} ${setting - 8}v16`).join('');
  return (
    <g>
      {mark.beside > 0 && (
        <path
          class="construction"
          d={`M${x} ${top}V${marks + 4}M${x} ${y(FURTHEST.high)}V${y(FURTHEST.low)}${through}`}
        />
      )}
      <text x={x + mark.beside} y={marks}>
        {mark.text}
      </text>
    </g>
  );
}

/** A tick with its hour, and under it what is then. */
function Hour({ hour, layout }: PartProps & { readonly hour: (typeof CLOCK)[number] }) {
  const { axis, bottom, top, clock } = layout;
  const x = timeScale(layout)(hour.at);
  return (
    <g>
      {hour.at === NAMED.frost && <path class="construction" d={`M${x} ${top}V${bottom}`} />}
      <path class="axis" d={`M${x} ${axis}v5`} />
      {hour.words.map((text, place) => (
        <text
          key={text}
          class="note"
          x={x}
          y={axis + 3 + (place + 1) * clock}
          text-anchor={hour.anchor}
        >
          {text}
        </text>
      ))}
    </g>
  );
}

/** The axis with its break, its hours, and the marks. */
export function TimeAxis({ layout }: PartProps) {
  const { left, right, axis } = layout;
  const cut = timeScale(layout)(EVENING);
  return (
    <g>
      {MARKS.map((mark) => (
        <Mark key={mark.at} mark={mark} layout={layout} />
      ))}
      <path class="axis" d={`M${left} ${axis}H${cut - 3}M${cut + 3} ${axis}H${right}`} />
      <path class="thin" d={`M${cut - 5} ${axis + 5}l4 -10M${cut + 1} ${axis + 5}l4 -10`} />
      {CLOCK.map((hour) => (
        <Hour key={hour.at} hour={hour} layout={layout} />
      ))}
    </g>
  );
}
