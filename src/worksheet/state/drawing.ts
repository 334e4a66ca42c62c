/**
 * When the sheet is drawn: what a key changes and what the sheet comes to by it are drawn together, in one go, unless the
 * results are late.
 */
import { effect, type ReadonlySignal } from '@preact/signals-core';
import { options } from 'preact';
import type { SheetView } from './view.ts';

const PATIENCE = 100; // ms, still felt as at once

let isTyping = false;
let draw: (() => void) | undefined;
let late: ReturnType<typeof setTimeout> | undefined;

/** Draws at once what waits. */
function drawNow(): void {
  clearTimeout(late);
  const waiting = draw;
  draw = undefined;
  waiting?.();
}

/** Whatever is not typing finds the sheet drawn: a key that goes somewhere, a press, a box that is left. */
function bindDrawing(page: Document): void {
  page.addEventListener('focusout', drawNow, { capture: true });
  page.addEventListener('click', drawNow, { capture: true });
  page.addEventListener(
    'keydown',
    ({ key, ctrlKey, metaKey }) => {
      if (key.length > 1 || ctrlKey || metaKey) drawNow();
    },
    { capture: true },
  );
}

/** How a command is run so that what is typed waits a moment for what it comes to, where that is on its way. */
export function drawTogether(
  page: Document,
  isBehind: ReadonlySignal<boolean>,
  run: SheetView['run'],
): SheetView['run'] {
  options.debounceRendering = (drawing) => {
    if (!isTyping || !isBehind.peek()) return queueMicrotask(drawing);
    draw = drawing;
    late = setTimeout(drawNow, PATIENCE);
  };
  effect(() => {
    if (!isBehind.value) queueMicrotask(drawNow);
  });
  bindDrawing(page);
  return (command) => {
    isTyping = command.do === 'type';
    run(command);
    isTyping = false;
  };
}
