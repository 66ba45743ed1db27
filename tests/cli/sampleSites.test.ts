import { describe, expect, it } from 'vitest';
import { gateKind } from '../../src/drawing/tables/gateKind.ts';
import { layOutSite } from '../../src/engine/layOutSite.ts';
import { legsOf } from '../../src/site/legsOf.ts';
import { openSite } from '../../src/site/openSite.ts';
import { saveSite } from '../../src/site/saveSite.ts';
import type { Site } from '../../src/site/site.ts';
import { sampleSite, sampleSites } from './sampleSites.ts';

const opened = (text: string): Site => {
  const site = openSite(text);
  if (!site.ok) throw new Error(site.reason);
  return site.value;
};

/** Leg lengths of every line in inches, from the marks alone. */
const legLengths = (site: Site): number[] =>
  Object.values(site.lines).flatMap((line) =>
    legsOf(line).map(({ start, end }) => {
      const [a, b] = [site.marks[start], site.marks[end]];
      return Math.hypot((b?.x ?? NaN) - (a?.x ?? NaN), (b?.y ?? NaN) - (a?.y ?? NaN));
    }),
  );

const total = (lengths: readonly number[]): number => lengths.reduce((sum, one) => sum + one, 0);

describe('sample sites', () => {
  it('there are nine', () => {
    expect(sampleSites.map(({ name }) => name).toSorted()).toEqual([
      'back-yard',
      'contractors-yard',
      'corner-lot',
      'hillside',
      'long-boundary',
      'plant-nursery',
      'sports-court',
      'taped-yard',
      'three-fences',
    ]);
  });

  it.each(sampleSites)('[K4] $name opens and saves back to the same bytes', ({ text }) => {
    expect(saveSite(opened(text))).toBe(text);
  });

  it.each(sampleSites)('[K4] $name says that it is invented', ({ text }) => {
    const { job } = opened(text);
    expect(job.remark).toContain('invented');
    expect(job.name).toMatch(/^Sample yard: /);
  });

  it.each(sampleSites)('[K4] $name has marks to a 16th of an inch', ({ text }) => {
    const odd = Object.entries(opened(text).marks).filter(
      ([, { x, y }]) => !Number.isInteger(x * 16) || !Number.isInteger(y * 16),
    );
    expect(odd).toEqual([]);
  });

  it('between them have a gate of every kind', () => {
    const kinds = sampleSites.flatMap(({ text }) =>
      Object.values(layOutSite(opened(text)).gates).map(gateKind),
    );
    expect([...new Set(kinds)].toSorted()).toEqual([
      'double cantilever',
      'double swing',
      'double swing on a centre stop',
      'gap without a gate',
      'single cantilever',
      'single swing',
    ]);
  });

  it.each(sampleSites)('$name has no stop flag, and every gate stands', ({ text }) => {
    const { flags, gates } = layOutSite(opened(text));
    expect(flags.filter(({ level }) => level === 'stop')).toEqual([]);
    expect(Object.values(gates).every(({ placed }) => placed)).toBe(true);
  });

  it('have one on a hill, with fence that follows and steps, a curve and a wall', () => {
    const site = opened(sampleSite('hillside'));
    const [line] = Object.values(site.lines);
    expect(Object.keys(line?.stepped ?? {})).toHaveLength(1);
    expect(Object.keys(line?.curved ?? {})).toHaveLength(1);
    expect(Object.values(line?.walls ?? {}).map(({ set }) => set.kind)).toEqual(['cored']);
    const ways = Object.values(layOutSite(site).lines)
      .flatMap(({ runs }) => runs)
      .flatMap(({ ground }) => ground?.fences ?? [])
      .map(({ way }) => way);
    expect(new Set(ways)).toEqual(new Set(['follow', 'step', 'wall']));
  });

  it('have one of chain link, boards and panels, with a gate in the boards', () => {
    const site = opened(sampleSite('three-fences'));
    const kinds = Object.values(site.lines).map(({ spec }) => site.specs[spec]?.infill.kind);
    expect(kinds.toSorted()).toEqual(['boards', 'chain link', 'panels']);
    const on = Object.values(site.gates).map(
      ({ line }) => site.specs[site.lines[line]!.spec]!.infill.kind,
    );
    expect(on.toSorted()).toEqual(['boards', 'chain link']);
  });

  it('have leaves of unequal width that meet, with a rod and its receiver', () => {
    const field = opened(sampleSite('plant-nursery')).gates['gate:field'];
    const tops = Object.values(field?.leaves ?? {}).map(({ widths }) => widths.top);
    expect(new Set(tops).size).toBe(2);
    expect(field?.receiver?.kind).toBe('driven pipe');
    expect(field?.holdOpen).toBe(true);
  });

  it('have a leaf that rolls with room for all of it along the fence', () => {
    const site = opened(sampleSite('contractors-yard'));
    const layout = layOutSite(site);
    const [slide] = layout.gates['gate:truck']?.slides ?? [];
    const run = Object.values(layout.lines)
      .flatMap(({ runs }) => runs)
      .find(({ spaces }) => spaces.some((space) => 'gate' in space && space.gate === 'gate:truck'));
    // it closes 24 ft and keeps half of that and 6 in behind: it is longer than its opening
    expect(slide?.width).toBe(437.5);
    expect(slide?.stored.start.x).toBeLessThan(run?.length ?? 0);
    expect(slide?.stored.start.x).toBe(1866 + 288 + 437.5);
  });

  it('differ as yards do', () => {
    const of = (name: string): Site => opened(sampleSite(name));
    const leavesOf = (site: Site): number[] =>
      Object.values(site.gates).map(({ leaves }) => Object.keys(leaves).length);
    expect(leavesOf(of('back-yard')).toSorted()).toEqual([1, 2]);
    expect(leavesOf(of('corner-lot'))).toEqual([1, 1]);
    expect(Object.values(of('sports-court').specs)[0]?.fabricHeight).toBe(120);
    expect(Object.values(of('sports-court').lines)[0]?.closed).toBe(true);
    expect(total(legLengths(of('contractors-yard'))) / 12).toBeCloseTo(1200, -1);
    expect(Object.values(of('contractors-yard').gates).map(({ nominal }) => nominal)).toContain(
      24 * 12,
    );
    expect(legLengths(of('long-boundary')).length).toBeGreaterThan(100);
    expect(Object.values(of('long-boundary').lines)[0]?.closed).toBe(false);
  });
});
