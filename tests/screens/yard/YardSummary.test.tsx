import { expect, it } from 'vitest';
import { YardSummary } from '../../../src/screens/yard/YardSummary.tsx';
import { addFix } from '../../../src/site/edits/addFix.ts';
import { addMark } from '../../../src/site/edits/addMark.ts';
import { inches } from '../../../src/units/inches.ts';
import { namedSite } from '../../store/namedSite.ts';
import { shown } from './shown.tsx';

it('counts the marks on which nothing stands, and those that only satellites found', () => {
  const empty = namedSite('Yard');
  expect(shown(empty, <YardSummary />)).not.toContain('Lone marks');
  const pin = addMark(empty, { x: 0, y: 0 }, 'M1');
  expect(shown(pin, <YardSummary />)).toContain('Lone marks: 1<');
  const walked = addFix(pin, {
    at: { x: 100, y: 0 },
    accuracy: inches(90),
    label: 'Walk 1',
    origin: { latitude: 40, longitude: -90 },
  });
  expect(shown(walked, <YardSummary />)).toContain('Lone marks: 2, 1 by GPS alone');
});
