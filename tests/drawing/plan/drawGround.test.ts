import { describe, expect, it } from 'vitest';
import { pageAtoms } from '../../../src/drawing/sheet/pageAtoms.ts';
import { drawGround } from '../../../src/drawing/plan/drawGround.ts';
import { drawLeafRooms } from '../../../src/drawing/plan/drawLeafRooms.ts';
import { drawPlan } from '../../../src/drawing/plan/drawPlan.ts';
import { drawClearGround, drawHeld } from '../../../src/drawing/plan/drawPins.ts';
import { letterExtent } from '../../../src/drawing/lettering/textBox.ts';
import { legend } from '../../../src/drawing/sheet/plan/legend.ts';
import { sheetSet } from '../../../src/drawing/sheet/sheetSet.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import type { FenceLine } from '../../../src/site/fenceLine.ts';
import type { LineId, VertexId } from '../../../src/site/ids.ts';
import type { Shot } from '../../../src/site/shot.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { wayYard, swing } from '../../engine/wayYard.ts';
import { overlapsOf, textsOf } from '../textsOf.ts';

const shot = (x: number, y: number, z: number): Shot => ({
  x: inches(x),
  y: inches(y),
  z: inches(z),
  label: '',
});

/** A gate on a plane that rises by 1 in 50 to the north. */
const plain = wayYard(swing);
const far = 3000;
const sloped: Site = {
  ...plain,
  shots: {
    'shot:1': shot(-far, -far, -60),
    'shot:2': shot(far, -far, -60),
    'shot:3': shot(far, far, 60),
    'shot:4': shot(-far, far, 60),
  },
};
const [line, fence] = (Object.entries(plain.lines) as [LineId, FenceLine][])[0] ?? [];
const leg = (Object.keys(fence?.path ?? {}) as VertexId[])[0];
if (line === undefined || leg === undefined) throw new Error('expected a fence line');
const place = (offset: number) => ({
  line,
  leg,
  anchor: { from: 'start', offset: inches(offset) } as const,
});
const pinned: Site = {
  ...plain,
  pins: {
    'pin:1': { ...place(60), holds: { kind: 'post' } },
    'pin:2': { ...place(90), holds: { kind: 'clear', reach: inches(10) } },
  },
};

const wordsIn = (site: Site): string[] =>
  textsOf(legend(site, layOutSite(site), 8, null).atoms).map(({ text }) => text);

describe('drawGround', () => {
  it('[D64] every shot is a cross with its height, signed, and nothing is drawn without shots', () => {
    const { ground } = layOutSite(sloped);
    const drawn = drawGround(ground, sloped.lengths);
    expect(drawn.filter((one) => one.kind === 'sign')).toHaveLength(4);
    const texts = drawn.flatMap((one) => (one.kind === 'text' ? [one.text] : []));
    expect(texts.filter((text) => text === '+5\'-0"').length).toBeGreaterThanOrEqual(2);
    expect(texts.filter((text) => text === '-5\'-0"').length).toBeGreaterThanOrEqual(2);
    expect(drawGround(layOutSite(plain).ground, plain.lengths)).toEqual([]);
  });

  it('[D64] contours lie where the plane has their height, 12 at most besides its foot, under all', () => {
    const primitives = drawPlan(sloped, layOutSite(sloped));
    const lines = primitives.flatMap((one) =>
      one.kind === 'polyline' && one.pen === 'contour' ? [one] : [],
    );
    // 10 ft of relief over 12 lines: every foot
    const places = lines.map(({ points }) => points.map(({ y }) => y));
    expect(places.length).toBeGreaterThanOrEqual(9);
    expect(places.length).toBeLessThanOrEqual(13);
    for (const ys of places) {
      for (const y of ys) expect(y / 50 / 12).toBeCloseTo(Math.round(y / 50 / 12), 6);
    }
    const kinds = primitives.map((one) => (one.kind === 'fence' ? 'fence' : 'other'));
    const contours = primitives.findLastIndex(
      (one) => one.kind === 'polyline' && one.pen === 'contour',
    );
    expect(contours).toBeLessThan(kinds.indexOf('fence'));
  });

  it('[D9] on a sheet its heights lie on no other text and are large enough to read', () => {
    const [, page] = sheetSet(sloped, layOutSite(sloped), { paper: 'letter', siteText: '' });
    const atoms = page === undefined ? [] : pageAtoms(page);
    expect(textsOf(atoms).map(({ text }) => text)).toContain('+5\'-0"');
    expect(overlapsOf(atoms)).toEqual([]);
    // the least height of letters that sheets are held to, 3/32 in
    const small = textsOf(atoms).filter(({ size }) => size * letterExtent.capital < 3 / 32);
    expect(small).toEqual([]);
  });

  it('[D64] the key names shots, contours and leaves only where they are shown', () => {
    expect(wordsIn(sloped).join()).toMatch(/grade shot.+contour, every 1'-0".+leaf nearest/);
    expect(wordsIn(plain).join()).not.toMatch(/shot|contour|nearest/);
  });
});

describe('drawLeafRooms', () => {
  it('[D65] where a leaf comes nearest to the ground says what is left; unknown ground says nothing', () => {
    const drawn = drawLeafRooms(sloped, layOutSite(sloped));
    expect(drawn.map(({ kind }) => kind)).toEqual(
      ['sign', 'text', 'sign', 'text'].slice(0, drawn.length),
    );
    expect(drawn.length).toBeGreaterThan(0);
    const texts = drawn.flatMap((one) => (one.kind === 'text' ? [one.text] : []));
    for (const text of texts) expect(text).toMatch(/ (left|too low)$/);
    expect(drawLeafRooms(plain, layOutSite(plain))).toEqual([]);
  });
});

describe('drawPins', () => {
  it('[D66] a held post has a pin clear of its hole, ground kept clear is hatched on the fence', () => {
    const layout = layOutSite(pinned);
    const [held] = drawHeld(layout);
    const post = layout.posts.get('post:pin:1');
    expect(held).toMatchObject({ kind: 'sign', sign: 'held', at: post?.at });
    expect(held).toMatchObject({ off: (post?.hole.diameter ?? 0) / 2 });
    const [area] = drawClearGround(pinned, layout);
    if (area?.kind !== 'area') throw new Error('expected an area');
    const start = Object.values(layout.lines)[0]?.legs[0]?.start ?? { x: NaN, y: NaN };
    const xs = area.points.map(({ x }) => x - start.x);
    expect([Math.min(...xs), Math.max(...xs)]).toEqual([80, 100]);
    expect(wordsIn(pinned)).toContain('post held at its place');
    expect(wordsIn(pinned)).toContain('kept clear of holes by hand');
    expect(wordsIn(plain).join()).not.toContain('held');
  });
});
