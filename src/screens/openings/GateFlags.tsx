import { acceptedAs, acceptedText } from '../../engine/acceptedAs.ts';
import { flagName } from '../../drawing/plan/drawFlags.ts';
import type { GateId } from '../../site/ids.ts';
import { useLayout, useSite } from '../bench.ts';
import { MendKey } from '../yard/MendKey.tsx';
import { phrase, phraseOf } from '../../phrases/phrase.ts';

const words = {
  stop: phraseOf('flag')`Stop`,
  settle: phraseOf('flag')`Settle`,
  caution: phraseOf('flag')`Caution`,
} as const;

/** The flags that stand on a gate, under the names that the plan shows. */
export const GateFlags = ({ gate }: { readonly gate: GateId }) => {
  const { flags } = useLayout();
  const site = useSite();
  const own = flags.flatMap((flag, n) =>
    flag.place.kind === 'gate' && flag.place.id === gate
      ? [{ ...flag, name: flagName(n), accepted: acceptedAs(site, flag) }]
      : [],
  );
  if (own.length === 0) return null;
  return (
    <ul className="gate-flags" aria-label={phrase`Flags of this gate`}>
      {own.map(({ name, level, message, rule, mend, accepted }) => (
        <li key={`${name} ${rule}`}>
          <b className={`need ${level}`}>
            {name} {words[level]}
          </b>{' '}
          {message}
          {accepted !== null && ` ${acceptedText(accepted.acceptance)}.`}
          {mend !== undefined && <MendKey mend={mend} />}
        </li>
      ))}
    </ul>
  );
};
