import type { SquareVerdict } from './squaringText.ts';

/** What a check says. */
export const Verdict = ({ verdict }: { readonly verdict: SquareVerdict }) => (
  <p className={verdict.square ? 'square-verdict' : 'square-verdict out'} role="status">
    {verdict.text}
  </p>
);
