/** What the desk tells of something from outside: that it is open, how far it can be relied on, or why it cannot be used. */

import type { DocumentRefusal } from '../../form/schema.ts';
import { asideCount } from '../../form/set-aside.ts';
import type { Brought } from '../io/outside.ts';
import { NOTICES } from './notices.ts';

/** Why a link or a file was not opened; the sheet on the table is untouched. */
export function refusalNotice(what: 'link' | 'file', reason: DocumentRefusal): string {
  const start = what === 'link' ? 'The link' : 'The file';
  const left = 'Your open sheet is unchanged.';
  const reasons: Readonly<Record<DocumentRefusal, string>> = {
    notOurs:
      what === 'link'
        ? `${start} has no worksheet in it. ${left}`
        : `${start} is not a worksheet of this site; those are made with “Save a file”. ${left}`,
    newerVersion: `${start} was made by a newer version of this page. Reload the page and try again. ${left}`,
    damaged:
      what === 'link'
        ? `${start} is damaged, perhaps cut in half on its way. Ask for it again, whole. ${left}`
        : `${start} is damaged and cannot be read. ${left}`,
  };
  return reasons[reason];
}

/** What is told beside a sheet that has no checksum. */
const uncheckedNotice = (what: 'link' | 'file'): string =>
  `This ${what} is of an older kind that cannot show damage. Compare its numbers with the sender’s before you rely on them.`;

/** That boxes of a sheet could not be read; of one box or of several. */
export const asideNotice = (count: number): string =>
  count === 1
    ? 'One box of this sheet could not be read. It is shown as it was found.'
    : `${count} boxes of this sheet could not be read. They are shown as they were found.`;

/** What is told of a sheet that a link or a file brought. */
export function arrivalNotice(what: 'link' | 'file', { document, isChecked }: Brought): string {
  const opened = what === 'link' ? NOTICES.linkOpened : NOTICES.fileOpened;
  const count = document.aside ? asideCount(document.aside) : 0;
  return [opened, !isChecked && uncheckedNotice(what), count > 0 && asideNotice(count)]
    .filter(Boolean)
    .join(' ');
}

/** Sheets of the browser's store that could not be read are left lying there. */
export function unreadableNotice(count: number): string {
  const sheets = count === 1 ? 'One kept sheet' : `${count} kept sheets`;
  return `${sheets} could not be read and ${count === 1 ? 'was' : 'were'} left alone in this browser’s storage.`;
}
