import { bench, describe } from 'vitest';
import { layOutFrom, type Laying } from '../../src/engine/layOutFrom.ts';
import { layOutSite } from '../../src/engine/layOutSite.ts';
import { moveGate } from '../../src/site/edits/moveGate.ts';
import { moveMark } from '../../src/site/edits/moveMark.ts';
import type { Site } from '../../src/site/site.ts';
import { inches } from '../../src/units/inches.ts';
import { bigYard, bigYardOnGround, middleMark } from './bigYard.ts';

/** A hand that goes on with one site: every call is the next draft, laid out from the one before. */
const drag = (site: Site, edit: (site: Site, step: number) => Site) => {
  let laying: Laying = layOutFrom(site, null);
  let step = 0;
  return () => {
    step += 1;
    laying = layOutFrom(edit(site, step), laying);
  };
};

const byMark = (site: Site, step: number): Site => {
  const { x = 0, y = 0 } = site.marks[middleMark] ?? {};
  return moveMark(site, middleMark, { x: x + (step % 200) / 16, y });
};

const byGate = (site: Site, step: number): Site =>
  moveGate(site, 'gate:long-10', { from: 'start', offset: inches(400 + (step % 200) / 16) });

describe.each([
  ['on the level', bigYard()],
  ['on known ground', bigYardOnGround()],
] as const)('a layout of 16,400 posts %s', (_, site) => {
  const posts = Object.keys(layOutSite(site).posts).length;
  if (posts < 16_000 || posts > 17_000) throw new Error(`${posts} posts: expected about 16,400`);

  bench('from the one before, dragging a gate', drag(site, byGate));

  bench('from the one before, dragging a corner', drag(site, byMark));

  bench('from nothing', () => {
    layOutSite(site);
  });
});
