/** One numbered part of the sheet: boxes on the left, results on the right (below on a phone). */
import type { ComponentChildren, JSX } from 'preact';
import { sheetView } from '../state/view.ts';

interface Props {
  readonly id: string;
  readonly number: number;
  readonly title: string;
  readonly boxes: ComponentChildren;
  readonly results?: ComponentChildren;
}

/** A part of the sheet. */
export function Section({ id, number, title, boxes, results }: Props): JSX.Element {
  return (
    <section class="part" id={id} aria-labelledby={`${id}-title`}>
      <h2 id={`${id}-title`}>
        <span class="part-number">{number}</span> {title}
      </h2>
      <div class="part-boxes">{boxes}</div>
      {results && <div class="part-results">{results}</div>}
    </section>
  );
}

/** Boxes that few people need, folded away. */
export function Seldom({
  name,
  open,
  children,
}: {
  readonly name: string;
  readonly open: boolean;
  readonly children: ComponentChildren;
}): JSX.Element {
  return (
    <details class="seldom" open={open}>
      <summary>{name}</summary>
      {children}
    </details>
  );
}

/** Boxes that a choice calls for; on the form without script, where nothing can be chosen, they always stand. */
export function Asked({
  when,
  children,
}: {
  readonly when: boolean;
  readonly children: ComponentChildren;
}): JSX.Element | null {
  if (when) return <div class="asked">{children}</div>;
  return sheetView().results ? null : <div class="asked without-script">{children}</div>;
}
