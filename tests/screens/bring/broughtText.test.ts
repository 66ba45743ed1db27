import { expect, it } from 'vitest';
import { broughtText } from '../../../src/screens/bring/broughtText.ts';
import { foundSummary } from '../../../src/screens/bring/foundSummary.ts';
import { countText } from '../../../src/screens/bring/groupWords.ts';
import { addMark } from '../../../src/site/edits/addMark.ts';
import { emptySite } from '../../../src/site/emptySite.ts';
import type { Found } from '../../../src/site/found.ts';

it('tells what a site has more than before', () => {
  const blank = emptySite({ specs: {}, hardware: {} });
  const one = addMark(blank, { x: 0, y: 0 });
  expect(broughtText(blank, one)).toBe('1 mark');
  expect(broughtText(blank, addMark(one, { x: 9, y: 0 }))).toBe('2 marks');
  expect(broughtText(one, one)).toBe('nothing new');
});

it('tells of a file what is little to hand over: counts, bends, and the first refusals', () => {
  const at = { x: 0, y: 0 };
  const path = (bow: number) => ({
    name: '',
    points: [at, { x: 9, y: 0 }],
    bows: [bow, 0],
    closed: false,
  });
  const found: Found = {
    groups: [
      { key: 'a', layer: 'A', shape: 'lines', paths: [path(0), path(2)] },
      { key: 'b', layer: 'B', shape: 'lines', paths: [path(0)] },
      {
        key: 'p',
        layer: 'B',
        shape: 'points',
        points: Array.from({ length: 1204 }, () => ({ name: '', at, z: null })),
      },
    ],
    told: ['Read in feet'],
    refused: Array.from({ length: 300 }, (_, n) => ({ where: `line ${n}`, reason: 'no' })),
    origin: null,
  };
  const summary = foundSummary(found);
  expect(summary.groups.map((group) => [countText(group), group.bent])).toEqual([
    ['2 lines', true],
    ['1 line', false],
    ['1,204 points', false],
  ]);
  expect([summary.refused.length, summary.refusals]).toEqual([20, 300]);
});
