import { expect, it } from 'vitest';
import { setMarks } from '../../../src/drawing/opening/setMarks.ts';
import { inches } from '../../../src/units/inches.ts';

const lengths = { system: 'inches', fraction: 8 } as const;

it('[D60] marks nothing, one width, or both where they differ', () => {
  expect(setMarks({ lengths }, null)).toEqual([]);
  const top = inches(118.5);
  const one = [{ text: 'set 118 1/2"', width: 118.5 }];
  expect(setMarks({ lengths }, { top, bottom: null })).toEqual(one);
  expect(setMarks({ lengths }, { top, bottom: top })).toEqual(one);
  // in sixteenths, as all that was set, on a site that writes eighths
  expect(setMarks({ lengths }, { top, bottom: inches(118.4375) })).toEqual([
    { text: 'set, top 118 1/2"', width: 118.5 },
    { text: 'set, bottom 118 7/16"', width: 118.4375 },
  ]);
});
