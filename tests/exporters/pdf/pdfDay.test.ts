import { expect, it } from 'vitest';
import { pdfDay } from '../../../src/exporters/pdf/pdfDay.ts';

it.each([
  ['2026-03-09', 'D:20260309'],
  [' 2024-02-29 ', 'D:20240229'],
  ['2026-02-29', null],
  ['2026-13-01', null],
  ['2026-00-10', null],
  ['3/9/2026', null],
  ['next week', null],
  ['', null],
])('[X53] the day “%s” is written %s', (text, written) => {
  expect(pdfDay(text)).toBe(written);
});
