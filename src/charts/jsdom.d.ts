/** The part of `jsdom` that is used; it ships no declarations. */
declare module 'jsdom' {
  export class JSDOM {
    readonly window: { readonly document: Document };
  }
}
