import { describe, expect, it } from 'vitest';
import { loaded } from '../load/loadLines.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { addShots } from '../../../src/site/edits/addShots.ts';
import { changeGate } from '../../../src/site/edits/changeGate.ts';
import { changeSpec } from '../../../src/site/edits/changeSpec.ts';
import { setGateOpens } from '../../../src/site/edits/setGateOpens.ts';
import { usualPanels } from '../../../src/engine/usualPanels.ts';
import { loadOf } from '../../../src/engine/load/loadOf.ts';
import { setLegGrade } from '../../../src/site/edits/setLegGrade.ts';
import { reverseLine } from '../../../src/site/edits/reverseLine.ts';
import { legsOf } from '../../../src/site/legsOf.ts';
import type { LineId } from '../../../src/site/ids.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { bare, fence, firstGate, gateOn } from '../plainYard.ts';

/** Shots at the corners of a large square, on a plane or whatever else a height is a function of. */
const onGround = (
  site: Site,
  heightAt: (x: number, y: number) => number,
  xs: readonly number[] = [-2000, 3000],
): Site =>
  addShots(
    site,
    xs.flatMap((x) => [-2000, 2000].map((y) => ({ x, y, z: inches(heightAt(x, y)), label: '' }))),
  );

const straight = (length: number) =>
  fence(bare, [
    [0, 0],
    [length, 0],
  ]);

const runOf = (site: Site) => {
  const layout = loaded(site);
  const [run] = Object.values(layout.lines).flatMap(({ runs }) => runs);
  if (run === undefined) throw new Error('expected a run');
  return { layout, run };
};

const rules = (site: Site) => layOutSite(site).flags.map(({ level, rule }) => `${level}: ${rule}`);

describe('fence on ground that is not flat', () => {
  it('[P21] is spaced and measured parallel to the grade: 15 % over 100 ft is 101.119 ft', () => {
    // 100 x sqrt(1 + 0.15 squared); spacing parallel to the grade: ASTM F567-07 4.1
    const { run, layout } = runOf(onGround(straight(1200), (x) => 0.15 * x));
    expect(run.length / 12).toBeCloseTo(101.119, 3);
    const bays = run.spaces.map(({ length }) => length);
    // 1213.4 in at 120 at most: one bay more than on the level
    expect(bays).toHaveLength(11);
    expect(Math.max(...bays) - Math.min(...bays)).toBeLessThan(1e-6);
    expect(bays.reduce((sum, bay) => sum + bay, 0)).toBeCloseTo(run.length, 6);
    const fabric = layout.load.find(({ item }) => item.startsWith('Fabric'));
    expect(fabric?.count).toBeCloseTo(run.length, 6);
    expect(layout.flags).toEqual([]);
  });

  it('[P21] level shots, and shots that are not there, change nothing', () => {
    const plain = loaded(straight(1000));
    const level = loaded(onGround(straight(1000), () => 37));
    expect([...level.posts.values()].map(({ at, length }) => [at, length])).toEqual(
      [...plain.posts.values()].map(({ at, length }) => [at, length]),
    );
    expect(level.load).toEqual(plain.load);
  });

  it('[P22] posts are as high as the fabric that follows, or steps, asks for', () => {
    const slope = onGround(straight(240), (x) => 0.15 * x);
    const above = (site: Site) => [...layOutSite(site).posts.values()].map((post) => post.above);
    const tall = 72 * Math.hypot(1, 0.15);
    // terminals 2 in over the fabric, line posts 2 in under it; fabric of 72 in stands plumb
    for (const height of above(slope)) {
      expect([tall + 2, tall - 2].some((want) => Math.abs(want - height) < 1e-6)).toBe(true);
    }
    const line = Object.keys(slope.lines)[0] as LineId;
    const leg = legsOf(slope.lines[line] ?? { path: {}, closed: false })[0]?.id ?? 'vertex:';
    const stepped = setLegGrade(slope, line, leg, 'step');
    const { run, layout } = runOf(stepped);
    const [steps] = run.ground?.fences ?? [];
    // total drop by the number of bays (trade practice): 36 in over 3 bays
    expect(steps?.way).toBe('step');
    expect(steps?.step).toBeCloseTo(12, 6);
    const heights = [...layout.posts.values()].map((post) => post.above);
    expect(Math.max(...heights)).toBeCloseTo(72 + 12 + 2, 6);
    const counts = (site: Site) =>
      loaded(site).load.map(({ item, count, each }) => [item, count.toFixed(6), each?.toFixed(6)]);
    expect(counts(reverseLine(stepped, line))).toEqual(counts(stepped));
  });

  it('[P26] panels that step are whole between posts in plan, those that follow along the grade', () => {
    const { spec } = usualPanels(inches(72));
    const hill = onGround(changeSpec(straight(1200), 'spec:six', spec), (x) => 0.15 * x);
    const leg = legsOf(hill.lines['line:1']!)[0]!.id;
    const stepped = setLegGrade(hill, 'line:1', leg, 'step');
    const xs = (site: Site) =>
      [...layOutSite(site).posts.values()].map(({ at }) => at.x).toSorted((a, b) => a - b);
    // 96 and a post of 2 1/2, level; or that along a slope of 15 %
    expect(xs(stepped)[1]).toBeCloseTo(98.5, 6);
    expect(xs(hill)[1]).toBeCloseTo(98.5 / Math.hypot(1, 0.15), 6);
    // 1197.5 clear in plan are twelve panels and one of 15 1/2, along the grade as many and one of 28.9
    for (const site of [hill, stepped]) {
      const panels = loaded(site).load.find(({ code }) => code.startsWith('panel '));
      expect(panels?.count).toBe(13);
      const cuts = loadOf(site, layOutSite(site)).tickets.filter(({ kind }) => kind === 'panel');
      expect(cuts.flatMap(({ ticket }) => ticket.tooLong)).toEqual([]);
      expect(cuts.map(({ ticket }) => ticket.bought)).toEqual([1]);
      expect(rules(site)).not.toContain('stop: bay over its maximum');
    }
    expect(rules(hill)).toContain('caution: panels lean with the ground');
    expect(rules(stepped)).not.toContain('caution: panels lean with the ground');
  });

  it('[P23] a pull post stands where the grade changes by more than the spec allows', () => {
    const crest = onGround(straight(1000), (x) => (x < 500 ? 0.2 * x : 100), [-2000, 500, 3000]);
    const asked = changeSpec(crest, 'spec:six', { pullGrade: 0.15 });
    const pulls = [...layOutSite(asked).posts.values()].filter(({ kind }) => kind === 'pull');
    expect(pulls.map(({ at }) => at.x)).toEqual([expect.closeTo(500, 6)]);
    const lax = changeSpec(crest, 'spec:six', { pullGrade: 0.25 });
    expect([...layOutSite(lax).posts.values()].some(({ kind }) => kind === 'pull')).toBe(false);
  });

  it('[F21] what lies outside of the shots is told and not guessed', () => {
    const part = onGround(straight(1200), (x) => 0.15 * x, [-2000, 600]);
    const { run } = runOf(part);
    expect(rules(part)).toEqual(['settle: ground not known']);
    expect(run.length).toBeCloseTo(600 * Math.hypot(1, 0.15) + 600, 6);
    const far = onGround(straight(1200), () => 0, [-3000, -2000]);
    expect(rules(far)).toEqual(['settle: ground not known']);
  });

  it('[F21] two shots on one spot that differ are told', () => {
    const site = addShots(
      onGround(straight(500), () => 0),
      [{ x: -2000, y: -2000, z: inches(6), label: '' }],
    );
    expect(rules(site)).toEqual(['settle: shots on one spot differ']);
  });

  it('[F22] a dip under a bay over the limit is told, and a hump that the fabric would be in', () => {
    const dip = (z: number) =>
      addShots(
        onGround(straight(100), () => 0),
        [0, 50, 100].map((x) => ({ x, y: 0, z: inches(x === 50 ? z : 0), label: '' })),
      );
    expect(rules(dip(-6))).toEqual(['settle: gap under the fabric']);
    expect(rules(dip(-1.5))).toEqual([]);
    expect(rules(dip(3))).toEqual(['caution: fabric in the ground']);
  });

  it('[F23] a leaf that opens uphill meets the ground; the other way it is free', () => {
    const gated = gateOn(straight(600), 0, { from: 'start', offset: 200 });
    const low = changeGate(gated, firstGate(gated), { bottom: inches(2) });
    // the ground rises to the north, 10 in 100, and the leaf opens to the left: north
    const slope = onGround(low, (_, y) => 0.1 * y);
    const [flag] = layOutSite(slope).flags.filter(({ rule }) => rule === 'leaf meets the ground');
    expect(flag?.level).toBe('stop');
    expect(flag?.message).toContain('open it the other way');
    expect(flag?.at.y).toBeGreaterThan(40);
    expect(rules(setGateOpens(slope, firstGate(slope), 'right'))).toEqual([]);
    // 44 in of leaf and its hinge at 1 in 10 less 2 in that it hangs off the ground
    expect(flag?.message).toMatch(/2 \d\/\d" too low/);
    const high = changeGate(slope, firstGate(slope), { bottom: inches(5) });
    expect(rules(high)).toEqual([]);
  });
});
