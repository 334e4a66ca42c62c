/** One numbered part of the sheet: boxes on the left, results on the right (below on a phone). */
import type { ComponentChildren, JSX } from 'preact';
import type { BoxPath, ChoicePath, OptionOf } from '../../form/paths.ts';
import { Box } from './Box.tsx';
import { part } from './part.tsx';

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

interface SeldomProps {
  readonly name: string;
  readonly paths: readonly BoxPath[];
}

/** Boxes that few people need, folded away until one of them is filled. */
export const Seldom = part<SeldomProps>(({ name, paths }, sheet) => (
  <details class="seldom" open={paths.some((path) => sheet.text(path) !== '')}>
    <summary>{name}</summary>
    {paths.map((path) => (
      <Box path={path} key={path} />
    ))}
  </details>
));

interface AskedIfProps {
  readonly isAsked: boolean;
  readonly children: ComponentChildren;
}

/** Boxes that a choice calls for; on the form without script, where nothing can be chosen, they always stand. */
export const AskedIf = part<AskedIfProps>(({ isAsked, children }, sheet) => {
  if (isAsked) return <div class="asked">{children}</div>;
  return sheet.isLive() ? null : <div class="asked without-script">{children}</div>;
});

interface AskedProps<Path extends ChoicePath> {
  readonly path: Path;
  readonly option: OptionOf<Path>;
  readonly children: ComponentChildren;
}

/** Boxes that one option of a choice calls for. */
export const Asked = part<AskedProps<ChoicePath>>(({ path, option, children }, sheet) => (
  <AskedIf isAsked={sheet.chosen(path) === option}>{children}</AskedIf>
)) as <Path extends ChoicePath>(props: AskedProps<Path>) => JSX.Element;
