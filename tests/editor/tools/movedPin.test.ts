import { expect, it } from 'vitest';
import { select } from '../../../src/editor/tools/select/select.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { openDocument } from '../../../src/site/openDocument.ts';
import type { Site } from '../../../src/site/site.ts';
import type { Selection } from '../../../src/store/selection.ts';
import { inches } from '../../../src/units/inches.ts';
import { drive, driven, move, press, release } from '../drive.ts';
import { yard } from '../yard.ts';

const layout = layOutSite(yard);
const post = [...layout.posts.values()].find(
  ({ kind, at }) => kind === 'line' && at.y === 0 && at.x > 500,
);
if (post === undefined) throw new Error('the yard has lost its line posts');
const { x } = post.at;

const on = (site: Site, selection: Selection = null) => ({ ...driven(select, site), selection });
const held = { kind: 'post', id: 'post:pin:1' } as const;
const dragged = drive(
  select,
  on(yard),
  [press(x, 1), move(x + 20, 1), move(x + 30, 1), release(x + 30, 1)],
  layOutSite,
);

it('[E14] a line post that is dragged is held where it is let go, in one step', () => {
  expect(dragged.labels).toEqual(['Move post']);
  expect(dragged.selection).toEqual(held);
  expect(openDocument(dragged.site).ok).toBe(true);
  const [pin] = Object.values(dragged.site.pins);
  expect(pin).toMatchObject({ holds: { kind: 'post' }, anchor: { from: 'start' } });
  expect(pin?.anchor.offset).toBe(Math.round(x + 30 - 360));
  expect(layOutSite(dragged.site).posts.get(held.id)?.at.x).toBeCloseTo(
    360 + Math.round(x - 330),
    9,
  );
});

it('[E14] a held post is nudged, and let go by erasing', () => {
  const nudged = drive(
    select,
    on(dragged.site, held),
    [{ do: 'nudge', x: inches(1), y: inches(5) }],
    layOutSite,
  );
  const was = Object.values(dragged.site.pins)[0]?.anchor.offset ?? NaN;
  expect(Object.values(nudged.site.pins)[0]?.anchor.offset).toBeCloseTo(was + 1, 9);
  const gone = drive(select, on(dragged.site, held), [{ do: 'erase' }], layOutSite);
  expect(gone.labels).toEqual(['Let post go']);
  expect(gone.site.pins).toEqual({});
  const free = drive(
    select,
    on(yard, { kind: 'post', id: post.id }),
    [{ do: 'erase' }],
    layOutSite,
  );
  expect(free.site).toBe(yard);
  expect(free.say).toMatch(/^The bays put this post here/);
});
