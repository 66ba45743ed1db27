import { postWord } from '../../../drawing/tables/postWord.ts';
import type { Run } from '../../../engine/layout.ts';
import { isTerminal, type Post, type PostId } from '../../../engine/post.ts';
import { phrase, sentenceCase } from '../../../phrases/phrase.ts';
import { formatLength } from '../../../units/formatLength.ts';
import { useLayout, useSite } from '../../bench.ts';
import { sizeText } from '../../fields/sizeText.ts';
import { postReading } from '../../yard/cards/postReading.ts';
import { spot, withElements } from '../../withElements.tsx';
import { holeReasons } from './holeReasons.ts';
import { postReasons } from './postReasons.ts';
import { tapeReasons } from './tapeReasons.ts';
import { tieReasons } from './tieReasons.ts';
import { Why } from './Why.tsx';

interface Props {
  readonly post: Post;
}

/** How large the hole of a post is, and why; nothing for a plate on a wall, which has none. */
export const HoleFigure = ({ post }: Props) => {
  const site = useSite();
  const { diameter, depth } = post.hole;
  if (depth === 0) return null;
  const [across, deep] = [diameter, depth].map((length) => formatLength(length, site.lengths));
  return (
    <Why of={phrase`the hole of post ${post.tag}`} reasons={() => holeReasons(post, site)}>
      <p>{phrase`Hole ${across ?? ''} across, ${deep ?? ''} deep`}</p>
    </Why>
  );
};

/** What a post is made of, and why it is there and so thick. */
export const PipeFigure = ({ post }: Props) => {
  const site = useSite();
  return (
    <Why of={phrase`post ${post.tag}`} reasons={() => postReasons(post, site)}>
      <p>{phrase`${post.pipe}, ${sizeText(post.od, site.lengths)} OD`}</p>
    </Why>
  );
};

/** What the tape reads at a post, and why; nothing for a post that is on no tape. */
export const ReadingFigure = ({ post }: Props) => {
  const site = useSite();
  const layout = useLayout();
  const said = postReading(site, layout, post.id);
  const run = Object.values(layout.lines)
    .flatMap(({ runs }): readonly Run[] => runs)
    .find(({ posts }) => posts.some((one) => one.post === post.id));
  if (said === null || run === undefined) return null;
  return (
    <Why
      of={phrase`the tape reading of post ${post.tag}`}
      reasons={() => tapeReasons(run, site, layout)}
    >
      <p>
        {withElements(
          said.hookedAt === ''
            ? phrase`The tape reads ${spot(0)}`
            : phrase`The tape reads ${spot(0)} from post ${said.hookedAt}`,
          [<b key="reading">{formatLength(said.reading, site.lengths)}</b>],
        )}
      </p>
    </Why>
  );
};

/** The post that stands at a mark, with its figures and their reasons; nothing where none does. */
export const PostHere = ({ id }: { readonly id: PostId }) => {
  const site = useSite();
  const layout = useLayout();
  const post = layout.posts.get(id);
  if (post === undefined) return null;
  return (
    <section aria-label={phrase`Post here`}>
      <h3>{phrase`Post ${post.tag}: ${sentenceCase(postWord(post))}`}</h3>
      <PipeFigure post={post} />
      <HoleFigure post={post} />
      <ReadingFigure post={post} />
      {isTerminal(post) && (
        <Why of={phrase`the ties of post ${post.tag}`} reasons={() => tieReasons(id, site, layout)}>
          <p>{phrase`How it is found again`}</p>
        </Why>
      )}
    </section>
  );
};
