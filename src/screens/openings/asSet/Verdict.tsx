import type { SetResult } from '../../../engine/set/setOf.ts';
import { writer } from '../../../engine/set/setCase.ts';
import { useSite } from '../../bench.ts';
import { verdictWords } from './verdictWords.ts';

/** The verdict on what was set, which stays in sight while the fields above it are filled in. */
export const Verdict = ({ set }: { readonly set: SetResult }) => {
  const { level, words, gap } = verdictWords(set, writer({ site: useSite() }));
  return (
    <div className={`verdict ${level}`} role="status">
      <strong>{words}</strong>
      <span>{gap}</span>
    </div>
  );
};
