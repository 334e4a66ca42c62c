/** What a reader can share of the open sheet: the same panel as under a figure. Fetched with the first touch. */
import { type ComponentType, render } from 'preact';
import { Panel } from '../../live/sharing/Panel.tsx';
import { savePicture } from '../../live/sharing/save-picture.ts';
import type { PictureKind, Shareable } from '../../live/sharing/shareable.ts';
import { Chart } from '../chart/Chart.tsx';
import { plainName } from '../io/file.ts';
import { SheetGiven } from '../kit/part.tsx';
import type { SheetView } from '../state/view.ts';
import { chartFinding } from '../words/chart-words.ts';
import { dateText } from '../words/kept-words.ts';

/** The link of the open sheet; undefined where it is too long. */
type Link = () => Promise<string | undefined>;

/** What the panel is of. */
export interface SheetSource {
  readonly link: Link;
  readonly view: SheetView;
  readonly page: Document;
}

const WORDS = {
  copied: 'The link is copied. The whole sheet is in it; nothing is sent anywhere.',
  coded: 'A phone’s camera opens this sheet, with all that is in it.',
} as const;

/** The name of the chart's file: the mill's, and the day of the measurement, or today where none is filled in. */
function pictureName(view: SheetView): string {
  const day = plainName(view.text('measuredOn')) || plainName(dateText(Date.now()));
  return `${plainName(view.text('label')) || 'mill'}-${day}-chart`;
}

/** Draws the chart out of sight, for its part may be folded, and saves it. */
async function saveChart({ view, page }: SheetSource, kind: PictureKind): Promise<void> {
  const finding = chartFinding(view) ?? '';
  const place = page.createElement('div');
  place.className = 'visually-hidden';
  page.body.append(place);
  render(
    <SheetGiven value={view}>
      <Chart finding={finding} />
    </SheetGiven>,
    place,
  );
  const svg = place.querySelector<SVGSVGElement>('.stress-chart svg');
  const key = place.querySelector('.chart-key')?.textContent ?? '';
  const notes = [view.text('label').trim(), key].filter((note) => note !== '');
  const address = page.location.origin + page.location.pathname; // a sheet's own link is a page long
  try {
    if (svg) await savePicture(pictureName(view), kind, { svg, finding, notes, address });
  } finally {
    render(null, place);
    place.remove();
  }
}

/** The sheet as it now is; its picture is that of its chart, once there is something to draw. */
export function sharedSheet(source: SheetSource): Shareable {
  const { link, view, page } = source;
  const finding = chartFinding(view);
  return {
    title: view.text('label').trim() || page.title,
    finding: () => chartFinding(view) ?? '',
    address: link,
    words: WORDS,
    save: finding === undefined ? undefined : (kind) => saveChart(source, kind),
  };
}

/** A link made once for as long as `sheet` is the same: browsers let a page copy only at once after a press. */
export function madeOnce(link: Link, sheet: () => unknown): Link {
  let of: unknown;
  let made: ReturnType<Link> | undefined;
  return () => {
    if (made && of === sheet()) return made;
    of = sheet();
    made = link();
    made.catch(() => {
      made = undefined; // tried again with the next press
    });
    return made;
  };
}

/** The panel of the open sheet, whose link is made when it opens; `sheet` is all that goes into the link. */
export function sheetPanel(source: SheetSource, sheet: () => unknown): ComponentType {
  const link = madeOnce(source.link, sheet);
  void link();
  return () => <Panel of={sharedSheet({ ...source, link })} />;
}
