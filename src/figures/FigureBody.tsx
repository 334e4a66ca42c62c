/**
 * The three parts of a figure, always in the same places: finding, drawing, title block.
 * Units: none of its own.
 * Source: definition.
 */
import type { FigureModule, FigureState } from './figure.ts';

interface FigureBodyProps {
  readonly figure: FigureModule;
  readonly state: FigureState;
}

/** A figure's finding, drawing and title block for one state. */
export function FigureBody({ figure, state }: FigureBodyProps) {
  const { finding, description, notes, Drawing } = figure;
  return (
    <>
      <p class="finding" id={`${state.idPrefix}-finding`}>
        {finding(state)}
      </p>
      <div class="drawing">
        <Drawing {...state} />
      </div>
      <p class="visually-hidden" id={`${state.idPrefix}-description`}>
        {description(state)}
      </p>
      <p class="title-block">
        {notes(state).map((note) => (
          <span key={note}>{note}</span>
        ))}
      </p>
    </>
  );
}
