import type { Acceptance } from '../site/acceptance.ts';
import type { AcceptanceId } from '../site/ids.ts';
import type { Site } from '../site/site.ts';
import type { Flag } from './flag.ts';
import { phrase } from '../phrases/phrase.ts';

/** What an acceptance of a flag names it by. */
export const acceptable = ({
  rule,
  place,
  message,
  said = message,
}: Flag): Pick<Acceptance, 'rule' | 'on' | 'said'> => ({
  rule,
  on: `${place.kind} ${place.id}`,
  said,
});

/** How a flag that stands was accepted. */
export interface Accepted {
  readonly id: AcceptanceId;
  readonly acceptance: Acceptance;
}

/**
 * How a flag was accepted, word for word as it stands now; null where nobody has, where it says something
 * else since, and for a `stop`, which nobody can accept.
 */
export const acceptedAs = (
  { acceptances }: Pick<Site, 'acceptances'>,
  flag: Flag,
): Accepted | null => {
  if (flag.level === 'stop') return null;
  const { rule, on, said } = acceptable(flag);
  for (const [id, acceptance] of Object.entries<Acceptance>(acceptances)) {
    if (acceptance.rule === rule && acceptance.on === on && acceptance.said === said)
      return { id: id as AcceptanceId, acceptance };
  }
  return null;
};

/** An acceptance in one line: `Accepted by AB, 2026-03-09: the owner wants it so`. */
export const acceptedText = ({ by, day, reason }: Acceptance): string =>
  phrase`Accepted by ${by}${day.trim() === '' ? '' : `, ${day}`}: ${reason}`;
