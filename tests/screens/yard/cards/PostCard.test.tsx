import { describe, expect, it } from 'vitest';
import { layOutSite } from '../../../../src/engine/layOutSite.ts';
import type { PostId } from '../../../../src/engine/post.ts';
import { firstReach, PostCard } from '../../../../src/screens/yard/cards/PostCard.tsx';
import { PinCard } from '../../../../src/screens/yard/cards/PinCard.tsx';
import { addPin } from '../../../../src/site/edits/addPin.ts';
import type { LineId, PinId, VertexId } from '../../../../src/site/ids.ts';
import { legsOf } from '../../../../src/site/legsOf.ts';
import type { Pin } from '../../../../src/site/pin.ts';
import type { Site } from '../../../../src/site/site.ts';
import { inches } from '../../../../src/units/inches.ts';
import { bare, fence, gateOn } from '../../../engine/plainYard.ts';
import { shown } from '../shown.tsx';

const run = fence(bare, [
  [0, 0],
  [600, 0],
]);

const held = (site: Site, offset: number, holds: Pin['holds']): Site => {
  const [line, found] = (Object.entries(site.lines) as [LineId, Site['lines'][LineId]][])[0] ?? [];
  const leg: VertexId | undefined = found === undefined ? undefined : legsOf(found)[0]?.id;
  if (line === undefined || leg === undefined) throw new Error('expected a leg');
  return addPin(site, { line, leg, anchor: { from: 'start', offset: inches(offset) }, holds });
};

const pinIn = (site: Site): PinId => Object.keys(site.pins)[0] as PinId;

const postAt = (site: Site, x: number): PostId => {
  const found = [...layOutSite(site).posts.values()].find(({ at }) => at.x === x);
  if (found === undefined) throw new Error(`expected a post at ${x}`);
  return found.id;
};

describe('PostCard', () => {
  it('offers to hold a free post or keep its ground clear, and tells its reading', () => {
    const card = shown(run, <PostCard id={postAt(run, 240)} />);
    expect(card).toMatch(/Line post .*The tape reads <b>20&#x27;-0&quot;<\/b> from post/);
    expect(card).toMatch(/Hold it here.*Keep ground clear here/);
    expect(card).not.toContain('Let it go');
  });

  it('tells where a held post is held, and offers to let it go', () => {
    const site = held(run, 200, { kind: 'post' });
    const card = shown(site, <PostCard id={`post:${pinIn(site)}`} />);
    expect(card).toMatch(/held by hand.*To its centre.*value="16&#x27;-8&quot;".*Let it go/);
    expect(card).not.toContain('Hold it here');
  });

  it('says so where no post can stand as it is held', () => {
    const gated = gateOn(run, 0, { from: 'start', offset: 180 });
    const site = held(gated, 200, { kind: 'post' });
    const card = shown(site, <PostCard id={`post:${pinIn(site)}`} />);
    expect(card).toContain('No post can stand where this one is held');
    expect(card).toContain('Let it go');
  });

  it('keeps a foot clear to each side at first, or 300 mm', () => {
    expect(firstReach('feet')).toBe(12);
    expect(firstReach('m') * 25.4).toBeCloseTo(300, 9);
  });
});

describe('PinCard', () => {
  it('shows the reach and the middle of ground kept clear, and nothing for a held post', () => {
    const clear = held(run, 240, { kind: 'clear', reach: inches(18) });
    const card = shown(clear, <PinCard id={pinIn(clear)} />);
    expect(card).toMatch(
      /To its middle.*value="20&#x27;-0&quot;".*Reach, to each side.*value="1&#x27;-6&quot;"/,
    );
    const post = held(run, 240, { kind: 'post' });
    expect(shown(post, <PinCard id={pinIn(post)} />)).toBe('');
  });
});
