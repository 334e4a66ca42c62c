/** What a machine can find that bars someone from a page. */
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from '@playwright/test';

/** WCAG 2.2, levels A and AA. */
export const WCAG: readonly string[] = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

/** The rules that theme and width of words can change. */
const LOOKS = ['color-contrast', 'link-in-text-block', 'target-size'];

/** Reads the page in place: it has no frames, for which alone axe would open a second page each time. */
async function found(axe: AxeBuilder): Promise<readonly string[]> {
  const { violations } = await axe.setLegacyMode().analyze();
  return violations.flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.html}`));
}

/** The page as it is shown now, by rules with any of these tags. */
export const barriers = (page: Page, tags = WCAG): Promise<readonly string[]> =>
  found(new AxeBuilder({ page }).options({ resultTypes: ['violations'] }).withTags([...tags]));

/** The same for what another look alone can change. */
export const barriersOfLooks = (page: Page): Promise<readonly string[]> =>
  found(new AxeBuilder({ page }).options({ resultTypes: ['violations'] }).withRules(LOOKS));
