/** What the desk tells after opening, copying, saving. */

/** The sentences. */
export const NOTICES = {
  linkOpened: 'The sheet from the link is open, beside your own.',
  fileOpened: 'The sheet from the file is open, beside your own.',
  exampleOpened: 'An invented mill is open. Change what you like; “New sheet” starts your own.',
  linkCopied: 'The link is copied. The whole sheet is in it; nothing is sent anywhere.',
  linkShown: 'Copy the link from the box below. The whole sheet is in it.',
  linkTooLong:
    'This sheet is too long for a link: programs that pass links on would cut it. Save a file instead.',
  earlyTyping:
    'What you typed before the page was ready is a sheet of its own; your other sheets are in the list.',
  fileSaved: 'The file is saved.',
  removed: 'The sheet is deleted.',
  followed: 'This sheet was changed in another tab. This tab now shows that version.',
  bothKept:
    'This sheet was changed in another tab too. What you typed is now a sheet of its own; the other one is in the list.',
} as const;
