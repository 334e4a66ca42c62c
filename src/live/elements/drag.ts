/**
 * Dragging a handle of a figure: movement of the pointer, in units of the drawing, times what the handle says a unit
 * is worth. An extra on top of slider and box; arrow keys work on the handle too.
 * Units: `perUnit` in SI per unit of the drawing, or per radian for a turn.
 */
import { stepsOfKey } from '../keys.ts';

/** What a drag needs from the page. */
export interface DragTarget {
  readonly read: (input: string) => number;
  readonly write: (input: string, value: number) => void;
  readonly step: (input: string, steps: number) => void;
}

interface Point {
  readonly x: number;
  readonly y: number;
}

function drawingPoint(svg: SVGSVGElement, event: PointerEvent): Point {
  const matrix = svg.getScreenCTM();
  return matrix
    ? new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse())
    : { x: event.clientX, y: event.clientY };
}

/** The turn from one point to another about a centre, in radians, the short way round. */
export function turnBetween(from: Point, to: Point, centre: Point): number {
  const angle = (point: Point) => Math.atan2(point.y - centre.y, point.x - centre.x);
  const turn = angle(to) - angle(from);
  return turn - 2 * Math.PI * Math.round(turn / (2 * Math.PI));
}

function movement(handle: SVGElement, from: Point, to: Point): number {
  const { drag, centreX, centreY } = handle.dataset;
  if (drag === 'turn') return turnBetween(from, to, { x: Number(centreX), y: Number(centreY) });
  return drag === 'y' ? to.y - from.y : to.x - from.x;
}

const handleOf = (event: Event) =>
  event.target instanceof Element ? event.target.closest<SVGElement>('.handle') : null;

/** Makes every handle inside `root` movable by pointer and keys. */
export function bindHandles(root: HTMLElement, target: DragTarget, signal: AbortSignal): void {
  let last: { handle: SVGElement; svg: SVGSVGElement; point: Point; value: number } | undefined;
  const on = <K extends keyof HTMLElementEventMap>(
    type: K,
    listener: (event: HTMLElementEventMap[K]) => void,
  ) => root.addEventListener(type, listener, { signal });

  on('pointerdown', (event) => {
    const handle = handleOf(event);
    const svg = handle?.ownerSVGElement;
    if (!handle || !svg || event.button !== 0) return;
    event.preventDefault();
    handle.setPointerCapture(event.pointerId);
    handle.focus({ preventScroll: true });
    const value = target.read(handle.dataset['input'] ?? '');
    last = { handle, svg, point: drawingPoint(svg, event), value };
  });
  on('pointermove', (event) => {
    if (!last) return;
    const point = drawingPoint(last.svg, event);
    const value =
      last.value +
      movement(last.handle, last.point, point) * Number(last.handle.dataset['perUnit']);
    last = { ...last, point, value };
    target.write(last.handle.dataset['input'] ?? '', value);
  });
  for (const type of ['pointerup', 'pointercancel'] as const) {
    on(type, () => {
      last = undefined;
    });
  }
  on('keydown', (event) => {
    const steps = handleOf(event) && stepsOfKey(event.key);
    const input = handleOf(event)?.dataset['input'];
    if (typeof steps !== 'number' || !input) return;
    event.preventDefault();
    target.step(input, steps);
  });
}
