/**
 * The three routes under each mistake, and what was read, as plain data: worked out at build, so that the page need not
 * carry the worksheet's code.
 * Units: SI.
 * Source: ottersleigh.ts beside it.
 */
import { MISTAKES } from './mistakes.ts';
import { READ, routesWith, SEEN, SIZES } from './ottersleigh.ts';

/** The routes in the order of the mistakes. */
export const routes = MISTAKES.map(routesWith);

/** What the owner read. */
export const read = READ;

/** How large the mistakes are. */
export const sizes = SIZES;

/** From where on a mistake of the section shows. */
export const seen = SEEN;
