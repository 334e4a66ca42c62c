/** Something that a reader can share: a figure, a sheet. */

/** The two kinds of picture. */
export type PictureKind = 'svg' | 'png';

/** What the panel needs of it; everything is asked for anew with each press, for the numbers move on. */
export interface Shareable {
  readonly title: string;
  readonly finding: () => string;
  /** Its link; undefined where that is too long to be passed on. */
  readonly address: () => string | Promise<string | undefined>;
  /** What is said of the link once it is copied, and of its code. */
  readonly words: { readonly copied: string; readonly coded: string };
  /** The code for another page, where it may stand in one. */
  readonly embedCode?: () => string;
  /** Saves its picture; undefined where there is no drawing. */
  readonly save: ((kind: PictureKind) => Promise<void>) | undefined;
}
