/** What the line at the foot says. */

const MEGABYTE = 1_000_000; // bytes

/** The sentences. */
export const WORDS = {
  allStored: 'The whole notebook is on this device and opens without a signal.',
  mostStored:
    'The lessons and the worksheet open without a signal; the rest is not yet on this device.',
  someMissing:
    'The lessons and the worksheet open without a signal; a part of the rest did not arrive.',
  notStored:
    'The notebook could not be put on this device, so it opens only with a signal. It is tried again at your next visit.',
  taking: 'The rest is on its way to this device …',
  take: (bytes: number) => `Take it to the yard (${(bytes / MEGABYTE).toFixed(1)} MB)`,
  newVersion: 'A newer version of the notebook is here. Your sheets stay.',
  useNow: 'Use it now',
  opening: 'The newer version opens in a moment …',
  install: 'The notebook can stand on your home screen like an app.',
  putThere: 'Put it there',
  installByHand: 'It can stand on your home screen like an app: Share, then Add to Home Screen.',
} as const;
