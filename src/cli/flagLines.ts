import { acceptedAs, acceptedText } from '../engine/acceptedAs.ts';
import type { Flag } from '../engine/flag.ts';
import type { Site } from '../site/site.ts';
import { columns } from './columns.ts';

/**
 * Flags as aligned lines, in the order given: level, what it stands on, message and how it was accepted. One
 * line for none.
 */
export const flagLines = (site: Pick<Site, 'acceptances'>, flags: readonly Flag[]): string[] =>
  flags.length === 0
    ? ['no flags']
    : columns(
        flags.flatMap((flag) => {
          const accepted = acceptedAs(site, flag);
          const line = [flag.level, flag.place.id, flag.message];
          return accepted === null ? [line] : [line, ['', '', acceptedText(accepted.acceptance)]];
        }),
      );
