/**
 * The axis of the day under its strips, the hours that matter drawn through all of it, and what to do at each.
 * Units: drawing units.
 */
import type { State } from '../state.ts';
import { NAMED } from './hours.ts';
import { changeScale, type DayLayout, EVENING, FURTHEST, timeScale } from './layout.ts';

const MARKS = [
  { at: NAMED.start, words: ['check', 'cold'], anchor: 'start' },
  { at: NAMED.lunch, words: ['check', 'warm'], anchor: 'middle' },
  { at: NAMED.stop, words: ['let', 'off'], anchor: 'middle' },
  { at: NAMED.frost, words: ['', 'frost'], anchor: 'middle' },
] as const;

const CLOCK = [
  { at: NAMED.start, text: '7 am', anchor: 'start' },
  { at: NAMED.lunch, text: 'noon', anchor: 'middle' },
  { at: NAMED.stop, text: '5 pm', anchor: 'middle' },
  { at: NAMED.frost, text: '4 am', anchor: 'middle' },
] as const;

interface PartProps {
  readonly state: State;
  readonly layout: DayLayout;
}

/** What to do, on one line, or on two where there is no room for one. */
function Mark({
  mark,
  layout,
}: { readonly mark: (typeof MARKS)[number] } & Pick<PartProps, 'layout'>) {
  const { marks, top, bottom, strips } = layout;
  const x = timeScale(layout)(mark.at);
  const { screw, spring, oil } = strips;
  const through = [
    `M${x} ${changeScale(layout, screw)(FURTHEST.high)}V${changeScale(layout, screw)(FURTHEST.low)}`,
    ...[spring, oil].map(({ setting }) => `M${x} ${setting - 8}v16`),
  ].join('');
  const lines = marks.line > 0 ? mark.words : [mark.words.join(' ').trim()];
  return (
    <g>
      {mark.at !== NAMED.start && (
        <path class="construction" d={`M${x} ${top}V${bottom}${through}`} />
      )}
      {lines.map((text, place) => (
        <text key={text} x={x} y={marks.y + place * marks.line} text-anchor={mark.anchor}>
          {text}
        </text>
      ))}
    </g>
  );
}

/** The axis with its break, its hours, and the marks. */
export function TimeAxis({ state, layout }: PartProps) {
  const { left, right, axis } = layout;
  const x = timeScale(layout);
  const cut = x(EVENING);
  return (
    <g>
      {MARKS.map((mark) => (
        <Mark key={mark.at} mark={mark} layout={layout} />
      ))}
      <path class="axis" d={`M${left} ${axis}H${cut - 3}M${cut + 3} ${axis}H${right}`} />
      <path class="thin" d={`M${cut - 5} ${axis + 5}l4 -10M${cut + 1} ${axis + 5}l4 -10`} />
      {CLOCK.map(({ at, text, anchor }) => (
        <g key={at}>
          <path class="axis" d={`M${x(at)} ${axis}v5`} />
          <text class="note" x={x(at)} y={axis + (state.narrow ? 17 : 22)} text-anchor={anchor}>
            {text}
          </text>
        </g>
      ))}
    </g>
  );
}
