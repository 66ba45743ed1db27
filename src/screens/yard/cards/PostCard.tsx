import { isMetric } from '../../../units/isMetric.ts';
import { postPlace } from '../../../editor/postPlace.ts';
import type { PostId } from '../../../engine/post.ts';
import { anchorAt } from '../../../site/anchor.ts';
import { addPin } from '../../../site/edits/addPin.ts';
import { removePin } from '../../../site/edits/removePin.ts';
import type { PinId } from '../../../site/ids.ts';
import { nextId } from '../../../site/nextId.ts';
import type { Pin } from '../../../site/pin.ts';
import { pinOf } from '../../../store/pinOf.ts';
import { formatLength } from '../../../units/formatLength.ts';
import { inches, type Inches } from '../../../units/inches.ts';
import type { LengthSystem } from '../../../units/lengthStyle.ts';
import { useBench, useLayout, useSite } from '../../bench.ts';
import { sizeText } from '../../fields/sizeText.ts';
import { PinPlace } from './PinPlace.tsx';
import { postReading } from './postReading.ts';
import { useDo } from './useEdit.ts';

/** How far ground is kept clear to each side until somebody says otherwise: a foot, or 300 mm. */
export const firstReach = (system: LengthSystem): Inches =>
  isMetric(system) ? inches(300 / 25.4) : inches(12);

/** What a post is, and what the tape reads there. */
const PostFacts = ({ id }: { readonly id: PostId }) => {
  const site = useSite();
  const layout = useLayout();
  const post = layout.posts[id];
  const pin = pinOf(id);
  if (post === undefined) {
    return (
      <p className="fault">
        No post can stand where this one is held: move it off the opening or the other post, or let
        it go.
      </p>
    );
  }
  const kind = post.kind === 'pull' ? 'Pull post' : 'Line post';
  const said = postReading(site, layout, id);
  const from = said === null || said.hookedAt === '' ? '' : ` from post ${said.hookedAt}`;
  return (
    <ul className="plain">
      <li>
        <b>
          {kind} {post.tag}
        </b>
        {pin === null ? '' : ', held by hand'}
      </li>
      <li>
        {post.pipe}, {sizeText(post.od, site.lengths)} OD
      </li>
      {said !== null && (
        <li>
          The tape reads <b>{formatLength(said.reading, site.lengths)}</b>
          {from}
        </li>
      )}
    </ul>
  );
};

/** What can be done with a post that is held: nothing moves it but the hand. */
const HeldKeys = ({ pin }: { readonly pin: PinId }) => {
  const make = useDo();
  return (
    <>
      <PinPlace id={pin} />
      <button type="button" onClick={() => make('Let post go', (was) => removePin(was, pin))}>
        Let it go
      </button>
    </>
  );
};

/** What can be done with a post that the bays put where it is. */
const FreeKeys = ({ id }: { readonly id: PostId }) => {
  const site = useSite();
  const layout = useLayout();
  const { session } = useBench();
  const make = useDo();
  const place = postPlace(site, layout, id);
  if (place === null) {
    return <p className="note">It stands where the grade changes, and moves with the shots.</p>;
  }
  const { line, leg, station, length } = place;
  const pin = (label: string, holds: Pin['holds']) => {
    const next = nextId(site, 'pin');
    make(label, (was) =>
      addPin(was, { line, leg, anchor: anchorAt('start', station, length), holds }),
    );
    session.setState({
      selection:
        holds.kind === 'post' ? { kind: 'post', id: `post:${next}` } : { kind: 'pin', id: next },
    });
  };
  return (
    <div className="choices">
      <button type="button" onClick={() => pin('Hold post', { kind: 'post' })}>
        Hold it here
      </button>
      <button
        type="button"
        onClick={() =>
          pin('Keep ground clear', { kind: 'clear', reach: firstReach(site.lengths.system) })
        }
      >
        Keep ground clear here
      </button>
    </div>
  );
};

/** A line or pull post: what it is, where, and whether it is held there. */
export const PostCard = ({ id }: { readonly id: PostId }) => {
  const pin = pinOf(id);
  return (
    <section aria-label="Post">
      <PostFacts id={id} />
      {pin === null ? <FreeKeys id={id} /> : <HeldKeys pin={pin} />}
    </section>
  );
};
