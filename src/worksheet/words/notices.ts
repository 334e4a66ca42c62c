/** What the desk tells after opening, copying, saving. */

/** The sentences. */
export const NOTICES = {
  linkOpened: 'The sheet from the link is open. Sheets of your own stay as they are.',
  fileOpened: 'The sheet from the file is open. Sheets of your own stay as they are.',
  exampleOpened: 'An invented mill is open. Change what you like; “New sheet” starts your own.',
  sheetCopied: 'This is the copy. Give it a name; the other sheet stays as it was.',
  earlyTyping:
    'What you typed before the page was ready is a sheet of its own; your other sheets are in the list.',
  fileSaved: 'The file is saved.',
  backupSaved: 'The file with all your sheets is saved.',
  removed: 'The sheet is deleted. It stays in the bin for a while.',
  followed: 'This sheet was changed in another tab too. Both tabs show the same now.',
  removedElsewhere: 'This sheet was deleted in another tab. Change something here, and it is back.',
  versionTaken: 'This is an earlier version of the sheet. Undo brings the newest back.',
  versionGone: 'That version is no longer there. Your sheet is unchanged.',
  notForgotten: 'The browser did not let us delete it. Try again.',
  notArrived:
    'A part of this page did not arrive. Your sheet is kept; load the page again to see the rest.',
  slowStorage: 'This browser is slow to open its storage. Your sheets appear as soon as it does.',
} as const;
