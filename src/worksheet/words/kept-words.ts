/** When something was kept, in the reader's own way of writing times. */

const DAY = { day: 'numeric', month: 'short' } as const;
const CLOCK = { hour: '2-digit', minute: '2-digit' } as const;

/** A moment, ms since 1970: the time of day, with its date on another day than `now`. */
export function momentText(time: number, now: number): string {
  const [then, today] = [new Date(time), new Date(now)];
  if (then.toDateString() === today.toDateString())
    return then.toLocaleTimeString(undefined, CLOCK);
  const year = then.getFullYear() === today.getFullYear() ? {} : { year: 'numeric' as const };
  return then.toLocaleString(undefined, { ...DAY, ...year, ...CLOCK });
}

/** What is said of the sheets that the browser refuses to keep. */
export function notKeptSentence(labels: readonly string[]): string {
  const names = labels.map((label) => (label ? `“${label}”` : 'the sheet without a name'));
  const which = names.join(' and ');
  return `This browser cannot keep ${which}: its storage is full or blocked. What was typed lasts only while this page is open. Save a file or copy a link to keep it.`;
}

/** What came out of a backup file. */
export interface BackupOutcome {
  readonly added: number;
  readonly newer: number; // brought up to date; what stood there is an earlier version now
  readonly older: number; // put among the earlier versions
  readonly same: number;
  readonly unread: number;
}

const sheets = (count: number) => (count === 1 ? '1 sheet' : `${count} sheets`);

/** What a backup has brought. */
export function backupSentence({ added, newer, older, same, unread }: BackupOutcome): string {
  const parts = [
    added > 0 && `${sheets(added)} added`,
    newer > 0 && `${sheets(newer)} brought up to date (what stood there is under earlier versions)`,
    older > 0 && `${sheets(older)} older than yours, put under earlier versions`,
    same > 0 && `${sheets(same)} here already`,
    unread > 0 && `${sheets(unread)} could not be read`,
  ].filter((part) => part !== false);
  return `From the backup: ${parts.join('; ') || 'no sheet was in it'}.`;
}
