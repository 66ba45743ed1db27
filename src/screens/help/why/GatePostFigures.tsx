import type { GateLayout } from '../../../engine/layout.ts';
import { phrase } from '../../../phrases/phrase.ts';
import { useLayout } from '../../bench.ts';
import { HoleFigure, PipeFigure } from './PostFigures.tsx';

/** The two posts of a gate with their holes, and the reasons for both; nothing while it is not placed. */
export const GatePostFigures = ({ laid }: { readonly laid: GateLayout }) => {
  const { posts } = useLayout();
  const own = laid.posts === null ? [] : [laid.posts.start, laid.posts.end];
  const found = own.flatMap((id) => posts.get(id) ?? []);
  if (found.length === 0) return null;
  return (
    <details className="more">
      <summary>{phrase`Its posts and their holes`}</summary>
      <div className="stack">
        {found.map((post) => (
          <section key={post.id} aria-label={phrase`Post ${post.tag}`}>
            <h3>{phrase`Post ${post.tag}`}</h3>
            <PipeFigure post={post} />
            <HoleFigure post={post} />
          </section>
        ))}
      </div>
    </details>
  );
};
