import { unsurveyed } from '../../src/engine/survey/survey.ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hit } from '../../src/editor/hit.ts';
import { layOutSite } from '../../src/engine/layOutSite.ts';
import type { GateLayout, Layout } from '../../src/engine/layout.ts';
import type { Feature } from '../../src/site/feature.ts';
import { inches } from '../../src/units/inches.ts';
import { radians } from '../../src/units/radians.ts';
import { heldBetween } from '../engine/heldBetween.ts';
import { yard } from './yard.ts';

const gate: GateLayout = {
  id: 'gate:1',
  line: 'line:fence',
  placed: true,
  opening: heldBetween(60, 60),
  stands: inches(60),
  posts: null,
  start: { x: 360, y: 0 },
  end: { x: 422, y: 0 },
  middle: { x: 391, y: 0 },
  bearing: radians(0),
  leaves: [],
  slides: [],
  stop: null,
  receiver: null,
};
const layout: Layout = {
  lines: {},
  posts: new Map(),
  gates: { 'gate:1': gate },
  ground: null,
  survey: unsurveyed,
  flags: [],
};

const at = (x: number, y: number, reach = 8) =>
  hit(yard, layout, { at: { x, y }, reach: inches(reach) });

describe('hit', () => {
  it('[E4] takes a gate before its leg, and the mark at its end at the end', () => {
    expect(at(391, 5)).toEqual({ kind: 'gate', id: 'gate:1' });
    expect(at(361, 5)).toEqual({ kind: 'mark', id: 'mark:house2' });
    expect(at(371, 5)).toEqual({ kind: 'gate', id: 'gate:1' });
  });

  it('[E4] takes a mark before the legs and walls that meet in it', () => {
    expect(at(838, -6)).toEqual({ kind: 'mark', id: 'mark:fence2' });
    expect(at(5, 238)).toEqual({ kind: 'mark', id: 'mark:house4' });
  });

  it('[E4] takes a leg before a feature, and the nearest leg', () => {
    expect(at(600, -7)).toEqual({ kind: 'leg', line: 'line:fence', id: 'vertex:fence1' });
    expect(at(833, -300)).toEqual({ kind: 'leg', line: 'line:fence', id: 'vertex:fence2' });
    expect(at(830, -12, 30)).toEqual({ kind: 'mark', id: 'mark:fence2' });
  });

  it('[E4] takes a post before its leg, a shot too, and leaves the middle of a bay to the leg', () => {
    const laid = layOutSite(yard);
    const post = [...laid.posts.values()].find(({ kind, at: { y } }) => kind === 'line' && y === 0);
    if (post === undefined) throw new Error('the yard has lost its line posts');
    const site = {
      ...yard,
      shots: { 'shot:1': { x: 700, y: -300, z: inches(0), label: '' } } as const,
    };
    const near = (x: number, y: number) => hit(site, laid, { at: { x, y }, reach: inches(20) });
    expect(near(post.at.x + 3, 4)).toEqual({ kind: 'post', id: post.id });
    expect(near(post.at.x + 60, 4)?.kind).toBe('leg');
    expect(near(705, -300)).toEqual({ kind: 'shot', id: 'shot:1' });
  });

  it('[E4] takes a feature by its side, its ground or its mark', () => {
    expect(at(-6, 100)).toEqual({ kind: 'feature', id: 'feature:house' });
    expect(at(180, 120)).toEqual({ kind: 'feature', id: 'feature:house' });
    expect(at(0, -895)).toEqual({ kind: 'feature', id: 'feature:lot' });
    expect(at(600, 608)).toEqual({ kind: 'feature', id: 'feature:tree' });
    expect(at(600, -300)).toBeNull();
  });

  it('[E4] takes the smaller of two grounds that lie in each other', () => {
    const slab: Feature = {
      kind: 'paving',
      label: '',
      path: {
        'vertex:s1': { mark: 'mark:s1', order: 'a0' },
        'vertex:s2': { mark: 'mark:s2', order: 'a1' },
        'vertex:s3': { mark: 'mark:s3', order: 'a2' },
      },
    };
    const site = {
      ...yard,
      marks: {
        ...yard.marks,
        'mark:s1': { x: -900, y: -600, label: '', fixed: false },
        'mark:s2': { x: 900, y: -600, label: '', fixed: false },
        'mark:s3': { x: 100, y: 900, label: '', fixed: false },
      } as const,
      features: { 'feature:a': slab, ...yard.features } as const,
    };
    const touch = { reach: inches(2), at: { x: 180, y: 120 } };
    expect(hit(site, layout, touch)).toEqual({ kind: 'feature', id: 'feature:house' });
    expect(hit(site, layout, { ...touch, at: { x: 180, y: -100 } })).toEqual({
      kind: 'feature',
      id: 'feature:a',
    });
  });

  it('[E4] meets a mark wherever a hand comes near enough, and nothing in the far', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 7, noNaN: true }),
        fc.double({ noNaN: true, min: 0, max: 7 }),
        (r, turn) => {
          const [x, y] = [840 + r * Math.cos(turn), -480 + r * Math.sin(turn)];
          expect(at(x, y)).toEqual({ kind: 'mark', id: 'mark:fence3' });
          expect(at(x + 5000, y)).toBeNull();
        },
      ),
    );
  });
});
