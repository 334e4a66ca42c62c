/** Which plans have their hand-outs on one page as well: those with more than a teacher likes to print one by one. */

const ONE_BY_ONE = 3;

/** Whether a plan's hand-outs are there as a set. */
export const hasSetOfHandOuts = ({ handouts }: { readonly handouts: readonly string[] }): boolean =>
  handouts.length > ONE_BY_ONE;
