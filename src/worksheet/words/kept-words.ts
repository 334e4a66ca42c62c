/** When something was kept, in the reader's own way of writing times. */

const DAY = { day: 'numeric', month: 'short' } as const;
const CLOCK = { hour: '2-digit', minute: '2-digit' } as const;

/** A way of writing times, made once: making it takes as long as all that a key does besides. */
function writtenAs(options: Intl.DateTimeFormatOptions): (time: Date) => string {
  let format: Intl.DateTimeFormat | undefined;
  return (time) => {
    format ??= new Intl.DateTimeFormat(undefined, options);
    return format.format(time);
  };
}

const clockText = writtenAs(CLOCK);
const dayAndClockText = writtenAs({ ...DAY, ...CLOCK });
const yearAndClockText = writtenAs({ ...DAY, year: 'numeric', ...CLOCK });

/** A moment, ms since 1970: the time of day, with its date on another day than `now`. */
export function momentText(time: number, now: number): string {
  const [then, today] = [new Date(time), new Date(now)];
  if (then.toDateString() === today.toDateString()) return clockText(then);
  const isThisYear = then.getFullYear() === today.getFullYear();
  return isThisYear ? dayAndClockText(then) : yearAndClockText(then);
}

/** What is said of the sheets that the browser refuses to keep. */
export function notKeptSentence(labels: readonly string[]): string {
  const names = labels.map((label) => (label ? `“${label}”` : 'the sheet without a name'));
  const which = names.join(' and ');
  return `This browser cannot keep ${which}: its storage is full or blocked. What was typed lasts only while this page is open. Save a file or copy a link to keep it.`;
}

/** A day as the pages write dates: 28 Nov 2026. */
export const dateText = (time: number): string =>
  new Date(time).toLocaleDateString('en-GB', { ...DAY, year: 'numeric' });
