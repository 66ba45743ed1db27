import { phrase } from '../../phrases/phrase.ts';
import { useBench, useSession } from '../bench.ts';

/** Which line of the load list is lit up on the pad, and a key that puts it out. */
export const LitLine = () => {
  const { session } = useBench();
  const lit = useSession((state) => state.lit);
  if (lit === null) return null;
  const many = lit.posts.length + lit.gates.length + lit.lines.length;
  return (
    <p className="lit" role="status">
      <span>
        {many === 1
          ? phrase`Lit: ${lit.item}, at 1 place`
          : phrase`Lit: ${lit.item}, at ${many} places`}
      </span>
      <button type="button" onClick={() => session.setState({ lit: null })}>
        {phrase`Put out`}
      </button>
      <a href="#load">{phrase`Back to the load list`}</a>
    </p>
  );
};
