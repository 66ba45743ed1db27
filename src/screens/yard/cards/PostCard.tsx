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
import { inches, type Inches } from '../../../units/inches.ts';
import type { LengthSystem } from '../../../units/lengthStyle.ts';
import { useBench, useLayout, useSite } from '../../bench.ts';
import { spot, withElements } from '../../withElements.tsx';
import { HoleFigure, PipeFigure, ReadingFigure } from '../../help/why/PostFigures.tsx';
import { PinPlace } from './PinPlace.tsx';
import { useDo } from './useEdit.ts';
import { phrase } from '../../../phrases/phrase.ts';

/** How far ground is kept clear to each side until somebody says otherwise: a foot, or 300 mm. */
export const firstReach = (system: LengthSystem): Inches =>
  isMetric(system) ? inches(300 / 25.4) : inches(12);

/** What a post is, and what the tape reads there. */
const PostFacts = ({ id }: { readonly id: PostId }) => {
  const layout = useLayout();
  const post = layout.posts.get(id);
  const pin = pinOf(id);
  if (post === undefined) {
    return (
      <p className="fault">
        {phrase`No post can stand where this one is held: move it off the opening or the other post, or let it go.`}
      </p>
    );
  }
  const name = (
    <b>{post.kind === 'pull' ? phrase`Pull post ${post.tag}` : phrase`Line post ${post.tag}`}</b>
  );
  return (
    <ul className="plain">
      <li>{pin === null ? name : withElements(phrase`${spot(0)}, held by hand`, [name])}</li>
      <li>
        <PipeFigure post={post} />
      </li>
      <li>
        <HoleFigure post={post} />
      </li>
      <li>
        <ReadingFigure post={post} />
      </li>
    </ul>
  );
};

/** What can be done with a post that is held: nothing moves it but the hand. */
const HeldKeys = ({ pin }: { readonly pin: PinId }) => {
  const make = useDo();
  return (
    <>
      <PinPlace id={pin} />
      <button type="button" onClick={() => make(phrase`Let post go`, (was) => removePin(was, pin))}>
        {phrase`Let it go`}
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
    return (
      <p className="note">{phrase`It stands where the grade changes, and moves with the shots.`}</p>
    );
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
      <button type="button" onClick={() => pin(phrase`Hold post`, { kind: 'post' })}>
        {phrase`Hold it here`}
      </button>
      <button
        type="button"
        onClick={() =>
          pin(phrase`Keep ground clear`, { kind: 'clear', reach: firstReach(site.lengths.system) })
        }
      >
        {phrase`Keep ground clear here`}
      </button>
    </div>
  );
};

/** A line or pull post: what it is, where, and whether it is held there. */
export const PostCard = ({ id }: { readonly id: PostId }) => {
  const pin = pinOf(id);
  return (
    <section aria-label={phrase`Post`}>
      <PostFacts id={id} />
      {pin === null ? <FreeKeys id={id} /> : <HeldKeys pin={pin} />}
    </section>
  );
};
