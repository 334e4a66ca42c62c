/** What came out of a backup, in words. */

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
