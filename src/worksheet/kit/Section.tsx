/** One numbered part of the sheet, that opens and closes: boxes on the left, results on the right (below on a phone). */
import type { ComponentChildren, JSX } from 'preact';
import {
  type BoxPath,
  type ChoicePath,
  fieldAt,
  type ListPath,
  type OptionOf,
} from '../../form/paths.ts';
import { isBare } from '../../form/units.ts';
import { THIN_SPACE } from '../../units/format-number.ts';
import { unitLabel } from '../../units/label.ts';
import { setOpen } from '../folds/open-parts.ts';
import {
  type PartId,
  partAfter,
  partNumber,
  SHEET_PARTS,
  type SheetPart,
} from '../folds/sheet-parts.ts';
import type { SheetView } from '../state/view.ts';
import { Box } from './Box.tsx';
import type { Late } from './late.tsx';
import { PartSketch } from './PartSketch.tsx';
import { part } from './part.tsx';

interface TitleProps {
  readonly id: PartId;
}

/** Number and title of a part. */
export function PartTitle({ id }: TitleProps): JSX.Element {
  return (
    <h2 id={`${id}-title`}>
      <span class="part-number">{partNumber(id)}</span> {SHEET_PARTS[id].title}
    </h2>
  );
}

/** Why the part is there, and its lesson. */
const Why = part<TitleProps>(({ id }, sheet): JSX.Element => {
  const of: SheetPart = SHEET_PARTS[id];
  const isScrew = sheet.shown().load.name === 'torque';
  const { why, lesson } = (isScrew ? undefined : of.ofPressure) ?? of;
  return (
    <p class="part-why">
      {why}
      {lesson && (
        <>
          {' '}
          <a class="no-print" href={`../lessons/${lesson}/`}>
            Its lesson
          </a>
        </>
      )}
    </p>
  );
});

/** Leads on to the next part: this one closes, that one opens. */
const Onward = part<TitleProps>(({ id }, sheet) => {
  const next = partAfter(id);
  if (!next) return null;
  const go = () => {
    setOpen(sheet.openParts, id, false);
    setOpen(sheet.openParts, next, true);
    requestAnimationFrame(() => {
      const place = document.getElementById(next);
      if (place instanceof HTMLDetailsElement) place.open = true; // the card's
      place?.scrollIntoView();
      place?.querySelector<HTMLElement>('summary')?.focus({ preventScroll: true });
    });
  };
  return (
    <p class="part-onward needs-script no-print">
      <button class="button" type="button" onClick={go}>
        Next: {SHEET_PARTS[next].title}
      </button>
    </p>
  );
});

interface Props {
  readonly id: PartId;
  readonly says?: ComponentChildren; // what it comes to, beside its title
  readonly boxes: ComponentChildren;
  readonly results?: ComponentChildren;
}

interface SaidProps {
  readonly path: BoxPath;
  readonly before?: string; // what it is, where its place does not say so
}

/** What was typed into one box, with its unit, as the sheet says it in short. */
export const Said = part<SaidProps>(({ path, before }, sheet) => {
  const [text, field] = [sheet.text(path), fieldAt(path)];
  if (text === '') return null;
  const unit = 'kind' in field && isBare(text) ? unitLabel(field.kind, sheet.shown().system) : '';
  return (
    <span class="hand">
      {before}
      {text}
      {unit && `${THIN_SPACE}${unit}`}
    </span>
  );
});

interface RowsSaidProps {
  readonly list: ListPath;
  readonly one: string;
  readonly many: string;
}

/** How many rows of a list are filled; nothing where none is. */
export const RowsSaid = part<RowsSaidProps>(({ list, one, many }, sheet) => {
  const count = sheet.rows(list);
  return count === 0 ? null : count === 1 ? one : `${count} ${many}`;
});

/** How many boxes of a part cannot be used, for who has closed it. */
const Remarks = part<TitleProps>(({ id }, sheet) => {
  const { holds }: SheetPart = SHEET_PARTS[id];
  const count = Object.keys(sheet.troubles().refusals).filter((path) => holds?.test(path)).length;
  return count === 0 ? null : <span class="part-remarks"> {count} to look at</span>;
});

/** What a part comes to; while it is closed nothing of it is drawn, so that a key elsewhere costs nothing here. */
const Results = part<Pick<Props, 'id' | 'results'>>(({ id, results }, sheet) =>
  sheet.openParts.value.has(id) ? <div class="part-results">{results}</div> : null,
);

/** The drawings show a screw, and a band on its wheels. */
const hasSketch = (id: PartId, { chosen }: Pick<SheetView, 'chosen'>): boolean =>
  !(id === 'tensioner' && chosen('tensioner.kind') === 'cylinder') &&
  !(id === 'mill' && chosen('mill.strands') === 'one');

/** A part of the sheet. */
export const Section = part<Props>(({ id, says, boxes, results }, sheet) => (
  <section class="part" id={id} aria-labelledby={`${id}-title`}>
    <details
      open={sheet.openParts.value.has(id)}
      onToggle={({ currentTarget }) => setOpen(sheet.openParts, id, currentTarget.open)}
    >
      <summary>
        <PartTitle id={id} />
        <span class="part-says">
          {says}
          <Remarks id={id} />
        </span>
      </summary>
      <div class="part-inside">
        <div class={results ? 'part-boxes' : 'part-boxes is-alone'}>
          <Why id={id} />
          {hasSketch(id, sheet) && <PartSketch id={id} />}
          {boxes}
        </div>
        {results && <Results id={id} results={results} />}
        <Onward id={id} />
      </div>
    </details>
  </section>
));

interface WhenOpenProps {
  readonly id: PartId;
  readonly children: ComponentChildren;
}

/** What is drawn once its part is open, or is to be printed because something is filled in. */
export const WhenOpen = part<WhenOpenProps & { readonly list: ListPath }>(
  ({ id, list, children }, sheet) =>
    sheet.openParts.value.has(id) || sheet.rows(list) > 0 ? children : null,
);

interface InsideProps {
  readonly id: PartId;
  readonly of: Late<object>;
}

/** The boxes of a part, fetched once it is open, or something in them is filled in and may be printed. */
export const Inside = part<InsideProps>(({ id, of: Boxes }, sheet) =>
  sheet.openParts.value.has(id) || sheet.isFilled(id) ? <Boxes /> : null,
);

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
