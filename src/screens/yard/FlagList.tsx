import { flagName } from '../../drawing/plan/drawFlags.ts';
import type { Flag } from '../../engine/flag.ts';
import { phrase, phraseOf } from '../../phrases/phrase.ts';
import { AcceptKeys } from './AcceptKeys.tsx';
import { MendKey } from './MendKey.tsx';

interface Props {
  readonly flags: readonly Flag[];
  readonly onFlag: (flag: Flag) => void;
}

const words = {
  stop: phraseOf('flag')`Stop`,
  settle: phrase`Settle`,
  caution: phrase`Caution`,
} as const;
const ranks = ['stop', 'settle', 'caution'] as const;

/** What the plan must settle, fix or know of, the gravest first. Tapping one goes to its place. */
export const FlagList = ({ flags, onFlag }: Props) => {
  if (flags.length === 0) return <p className="note">{phrase`No flags stand.`}</p>;
  const named = flags.map((flag, n) => ({ flag, name: flagName(n) }));
  const ranked = ranks.flatMap((level) => named.filter(({ flag }) => flag.level === level));
  return (
    <ul className="flags">
      {ranked.map(({ flag, name }) => (
        <li key={`${name} ${flag.rule}`}>
          <button type="button" className={`flag ${flag.level}`} onClick={() => onFlag(flag)}>
            <b>
              {name} {words[flag.level]}
            </b>
            <span>{flag.message}</span>
          </button>
          {flag.mend !== undefined && <MendKey mend={flag.mend} />}
          <AcceptKeys flag={flag} />
        </li>
      ))}
    </ul>
  );
};
