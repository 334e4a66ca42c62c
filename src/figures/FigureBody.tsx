/**
 * The parts of a figure, always in the same places: finding, drawing, then the controls, then the title block.
 * Units: none of its own.
 * Source: definition.
 */
import type { Model } from '../models/define-model.ts';
import type { FigureModule, FigureState } from './figure.ts';

interface FigureBodyProps<M extends Model> {
  readonly figure: FigureModule<M>;
  readonly state: FigureState<M>;
}

/** A figure's finding and drawing for one state. */
export function FigureBody<M extends Model>({ figure, state }: FigureBodyProps<M>) {
  const { finding, description, Drawing } = figure;
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
    </>
  );
}

/** A figure's title block: scales, exaggerations, assumptions. */
export function FigureNotes<M extends Model>({ figure, state }: FigureBodyProps<M>) {
  return (
    <p class="title-block">
      {figure.notes(state).map((note) => (
        <span key={note}>{note}</span>
      ))}
    </p>
  );
}
