/** What the desk tells after opening, copying, saving. */

/** The sentences. */
export const NOTICES = {
  linkOpened: 'The sheet from the link is on the table, beside your own.',
  fileOpened: 'The sheet from the file is on the table, beside your own.',
  exampleOpened:
    'An invented mill is on the table. Change what you like; “New sheet” starts your own.',
  linkCopied: 'The link is copied. It holds the whole sheet; nothing is sent anywhere.',
  linkShown: 'Copy the link from the box below. It holds the whole sheet.',
  fileSaved: 'The file is saved.',
  removed: 'The sheet is thrown away.',
  followed: 'This sheet was changed in another tab, and stands here as it does there.',
  bothKept:
    'This sheet was changed in another tab too. What you typed stays here, from now on as a sheet of its own; the other one is in the list.',
} as const;
