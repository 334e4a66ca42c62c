import { expect, it } from 'vitest';
import { evaluateWorksheet } from '../../src/core/worksheet.ts';
import { millC } from '../core/fixtures/worksheet-mills.ts';

it('evaluates a worksheet of 12 readings in less than 20 ms of the processor', () => {
  expect(millC.readings).toHaveLength(12);
  const times = Array.from({ length: 12 }, () => {
    const before = process.cpuUsage();
    evaluateWorksheet(millC);
    return process.cpuUsage(before).user / 1000;
  });
  expect(Math.min(...times)).toBeLessThan(20);
});
