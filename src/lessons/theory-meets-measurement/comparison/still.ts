/** A part of the drawing that depends on nothing but the screen and the units: drawn once for each, then left alone. */
import type { VNode } from 'preact';
import type { State } from '../state.ts';

/** The drawing that `draw` gives, made once for each width of screen and each unit system. */
export function still(draw: (state: State) => VNode): (state: State) => VNode {
  const drawn = new Map<string, VNode>();
  return (state) => {
    const key = `${state.narrow} ${state.system}`;
    const made = drawn.get(key) ?? draw(state);
    drawn.set(key, made);
    return made;
  };
}
