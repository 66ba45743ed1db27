import { expect, it } from 'vitest';
import type { WalkState } from '../../../../src/editor/walk/walk.ts';
import { RoughFix } from '../../../../src/screens/yard/walk/RoughFix.tsx';
import { WalkPanel } from '../../../../src/screens/yard/walk/WalkPanel.tsx';
import type { WalkPlace } from '../../../../src/screens/yard/walk/walkPlace.ts';
import { addFix } from '../../../../src/site/edits/addFix.ts';
import { moveMark } from '../../../../src/site/edits/moveMark.ts';
import { inches } from '../../../../src/units/inches.ts';
import { namedSite } from '../../../store/namedSite.ts';
import { shown } from '../shown.tsx';

const origin = { latitude: 40, longitude: -90 };
const empty = namedSite('Yard');
const place: WalkPlace = { at: { x: 0, y: 0 }, origin, radius: inches(200), away: null };
const here: WalkState = {
  is: 'here',
  now: { ...origin, radius: inches(200) },
  gathered: null,
  told: null,
};

const panel = (state: WalkState, at: WalkPlace | null, site = empty): string =>
  shown(
    site,
    <WalkPanel walk={{ state, place: at, send: () => undefined, start: () => undefined }} />,
  );

it('has its keys only where a mark can be dropped', () => {
  expect(panel(here, place)).toContain('Drop a mark here');
  expect(panel(here, place)).toContain('The first mark says where on earth this drawing is');
  expect(panel(here, place, { ...empty, origin })).not.toContain('The first mark says');
  expect(panel(here, null)).not.toContain('Drop a mark here');
  expect(panel(here, { ...place, away: inches(1e7) })).not.toContain('Drop a mark here');
  expect(panel({ is: 'waiting', lack: null }, null)).not.toContain('Try again');
  expect(panel({ is: 'off', why: 'denied' }, null)).toContain('Try again');
});

it('the card of a mark says how rough satellites left it, and nothing of any other', () => {
  const found = { at: { x: 0, y: 0 }, accuracy: inches(58.8), label: 'Walk 1', origin };
  const site = addFix(empty, found);
  // 2.4477 times 58.8 in is 143.9 in
  expect(shown(site, <RoughFix id="mark:1" />)).toContain('Rough, by GPS, ±12 ft');
  expect(
    shown({ ...site, lengths: { system: 'mm', fraction: 16 } }, <RoughFix id="mark:1" />),
  ).toContain('±4 m');
  expect(shown(site, <RoughFix id="mark:2" />)).toBe('');
  const put = moveMark(site, 'mark:1', { x: 0, y: 120 });
  expect(shown(put, <RoughFix id="mark:1" />)).toContain('GPS had it 10 ft from here, ±12 ft');
});
