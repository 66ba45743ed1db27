import { afterEach, expect, it } from 'vitest';
import { spanish } from '../../src/phrases/es.ts';
import { speakBy } from '../../src/phrases/phrase.ts';
import { compassWord } from '../../src/units/compassWord.ts';
import { radians } from '../../src/units/radians.ts';

afterEach(() => speakBy(null));

const eighths = [0, 1, 2, 3, 4, 5, 6, 7].map((n) => radians((n * Math.PI) / 4));

it('[A20] a wind is named in the language, and typed and compared in English', async () => {
  speakBy((key) => spanish[key]);
  // what names things is made when it is loaded
  const { compassName } = await import('../../src/units/compassName.ts');
  expect(eighths.map(compassName)).toEqual([
    'este',
    'noreste',
    'norte',
    'noroeste',
    'oeste',
    'suroeste',
    'sur',
    'sureste',
  ]);
  expect(eighths.map(compassWord)).toContain('north-east');
});
