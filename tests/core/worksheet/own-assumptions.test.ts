/** What the worksheet alone assumes stands once, and its ranges run upwards. */
import { describe, expect, it } from 'vitest';
import * as shared from '../../../src/core/assumptions.ts';
import * as own from '../../../src/core/worksheet/own-assumptions.ts';

describe('what the worksheet alone assumes', () => {
  it('is not assumed a second time', () => {
    for (const name of Object.keys(own)) expect(shared).not.toHaveProperty(name);
  });

  it('has a range for a thread of which nothing is known that holds the greased and the dry', () => {
    for (const known of [own.greasedThreadFriction, own.dryThreadFriction]) {
      expect(own.unknownThreadFriction.low).toBeLessThanOrEqual(known.low);
      expect(own.unknownThreadFriction.high).toBeGreaterThanOrEqual(known.high);
    }
  });
});
