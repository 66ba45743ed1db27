import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chainOf } from '../../../src/engine/posts/chain.ts';
import { spotsOf } from '../../../src/engine/posts/spotsOf.ts';
import { straightTurn, turningsOf, usesOfMarks } from '../../../src/engine/posts/turnings.ts';
import type { LineId } from '../../../src/site/ids.ts';
import type { Site } from '../../../src/site/site.ts';
import { fromDegrees } from '../../../src/units/radians.ts';
import { bare, fence } from '../plainYard.ts';

/** What stands at each mark of the first line of a site, with a corner angle in degrees. */
const turningsIn = (site: Site, degrees = 30): string[] => {
  const chains = Object.entries(site.lines).map(([id, line]) =>
    chainOf(id as LineId, line, site, spotsOf(site)),
  );
  const [first] = chains;
  if (first === undefined) throw new Error('no line');
  return turningsOf(first, fromDegrees(degrees), usesOfMarks(chains));
};

/** A line of two legs of 100 in that turns by so many degrees, itself turned by `way` degrees. */
const turned = (degrees: number, way = 0): Site => {
  const [a, b] = [fromDegrees(way), fromDegrees(way + degrees)];
  return fence(bare, [
    [-100 * Math.cos(a), -100 * Math.sin(a)],
    [0, 0],
    [100 * Math.cos(b), 100 * Math.sin(b)],
  ]);
};

describe('turningsOf', () => {
  it.each([
    [0, 'straight'],
    [0.001, 'straight'],
    [1, 'bend'],
    [29, 'bend'],
    [31, 'corner'],
    [-31, 'corner'],
    [180, 'corner'],
  ])('[P11] a turn of %d° is a %s', (degrees, what) => {
    expect(turningsIn(turned(degrees))).toEqual(['end', what, 'end']);
  });

  it('[P11] a turn of just the corner angle is a bend whichever way the fence lies', () => {
    fc.assert(
      fc.property(fc.constantFrom(5, 10, 15, 30, 45, 90), fc.nat(359), (corner, way) => {
        expect(turningsIn(turned(corner, way), corner)[1]).toBe('bend');
      }),
    );
  });

  it('[P11] with a corner angle of zero a mark passed straight on still gets no post', () => {
    fc.assert(
      fc.property(fc.nat(359), (way) => {
        expect(turningsIn(turned(0, way), 0)[1]).toBe('straight');
      }),
    );
    expect(turningsIn(turned(1), 0)[1]).toBe('corner');
  });

  it('[P11] what counts as straight moves a mark by less than 1/8 in over 100 ft', () => {
    expect(Math.sin(straightTurn) * 1200).toBeLessThan(1 / 8);
  });

  it('a closed line turns at every mark and ends at none', () => {
    const square = fence(
      bare,
      [
        [0, 0],
        [240, 0],
        [240, 240],
        [0, 240],
      ],
      'closed',
    );
    expect(turningsIn(square)).toEqual(['corner', 'corner', 'corner', 'corner']);
  });

  it('a mark that a line passes twice is a junction', () => {
    const site = fence(bare, [
      [0, 0],
      [240, 0],
      [240, 240],
      [480, 0],
    ]);
    const line = site.lines['line:1'];
    if (line === undefined) throw new Error('no line');
    const [, crossing] = Object.entries(line.path).toSorted(([, a], [, b]) =>
      a.order < b.order ? -1 : 1,
    );
    const path = {
      ...line.path,
      'vertex:back': { mark: crossing?.[1].mark ?? 'mark:1', order: 'zz' },
    };
    const twice: Site = { ...site, lines: { 'line:1': { ...line, path } } };
    expect(turningsIn(twice)).toEqual(['end', 'junction', 'corner', 'corner', 'junction']);
  });
});
