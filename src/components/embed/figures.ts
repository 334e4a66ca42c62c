/** Which figures a lesson has. */

/** Their names, in the order of its text. */
export const figuresIn = (body = ''): readonly string[] =>
  [...body.matchAll(/<Figure name="([\w-]+)"/g)].map(([, name]) => name ?? '');
