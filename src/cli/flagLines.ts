import { acceptedAs, acceptedText } from '../engine/acceptedAs.ts';
import type { Flag } from '../engine/flag.ts';
import type { Site } from '../site/site.ts';
import { columns } from './columns.ts';
import { levelWords } from './levelWords.ts';
import { phrase } from '../phrases/phrase.ts';

/**
 * Flags as aligned lines, in the order given: level, what it stands on, message and how it was accepted. One
 * line for none.
 */
export const flagLines = (site: Pick<Site, 'acceptances'>, flags: readonly Flag[]): string[] =>
  flags.length === 0
    ? [phrase`no flags`]
    : columns(
        flags.flatMap((flag) => {
          const accepted = acceptedAs(site, flag);
          const line = [levelWords[flag.level], flag.place.id, flag.message];
          return accepted === null ? [line] : [line, ['', '', acceptedText(accepted.acceptance)]];
        }),
      );
