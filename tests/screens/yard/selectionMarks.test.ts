import { describe, expect, it } from 'vitest';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { selectionMarks } from '../../../src/screens/yard/selectionMarks.ts';
import { addPin } from '../../../src/site/edits/addPin.ts';
import { addShots } from '../../../src/site/edits/addShots.ts';
import type { LineId } from '../../../src/site/ids.ts';
import { legsOf } from '../../../src/site/legsOf.ts';
import type { Pin } from '../../../src/site/pin.ts';
import type { Site } from '../../../src/site/site.ts';
import type { Selection } from '../../../src/store/selection.ts';
import { inches } from '../../../src/units/inches.ts';
import { bare, fence, gateOn } from '../../engine/plainYard.ts';

const run = fence(bare, [
  [0, 0],
  [600, 0],
]);

const held = (site: Site, offset: number, holds: Pin['holds']): Site => {
  const [line] = Object.keys(site.lines) as LineId[];
  const found = line === undefined ? undefined : site.lines[line];
  const leg = found === undefined ? undefined : legsOf(found)[0]?.id;
  if (line === undefined || leg === undefined) throw new Error('expected a leg');
  return addPin(site, { line, leg, anchor: { from: 'start', offset: inches(offset) }, holds });
};

const knobs = (site: Site, selection: Selection) =>
  selectionMarks(site, layOutSite(site), { selection, scale: 1 }).flatMap((mark) =>
    mark.kind === 'circle' ? [mark.centre] : [],
  );

const band = (site: Site, selection: Selection) =>
  selectionMarks(site, layOutSite(site), { selection, scale: 1 }).flatMap((mark) =>
    mark.kind === 'area' ? mark.points.map(({ x }) => x) : [],
  );

describe('selectionMarks', () => {
  it('puts one knob on a post and on a grade shot where they are', () => {
    const site = addShots(held(run, 200, { kind: 'post' }), [
      { x: 50, y: 70, z: inches(3), label: '' },
    ]);
    expect(knobs(site, { kind: 'post', id: 'post:pin:1' })).toEqual([{ x: 200, y: 0 }]);
    expect(knobs(site, { kind: 'shot', id: 'shot:1' })).toEqual([{ x: 50, y: 70 }]);
    expect(knobs(site, { kind: 'shot', id: 'shot:9' })).toEqual([]);
  });

  it('puts the knob of a post that cannot stand where it is held', () => {
    const gated = gateOn(run, 0, { from: 'start', offset: 180 });
    const site = held(gated, 200, { kind: 'post' });
    expect(layOutSite(site).posts.get('post:pin:1')).toBeUndefined();
    expect(knobs(site, { kind: 'post', id: 'post:pin:1' })).toEqual([{ x: 200, y: 0 }]);
  });

  it('bands ground kept clear as far as it reaches', () => {
    const site = held(run, 240, { kind: 'clear', reach: inches(18) });
    const across = band(site, { kind: 'pin', id: 'pin:1' });
    expect([Math.min(...across), Math.max(...across)]).toEqual([222, 258]);
    expect(knobs(site, { kind: 'pin', id: 'pin:1' })).toEqual([{ x: 240, y: 0 }]);
    expect(selectionMarks(site, layOutSite(site), { selection: null, scale: 1 })).toEqual([]);
  });
});
