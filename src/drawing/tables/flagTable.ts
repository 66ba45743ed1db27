import { acceptedAs, acceptedText } from '../../engine/acceptedAs.ts';
import type { Layout } from '../../engine/layout.ts';
import type { Site } from '../../site/site.ts';
import { flagName } from '../plan/drawFlags.ts';
import type { Column, Table } from './table.ts';
import { phrase } from '../../phrases/phrase.ts';
import { flagLevelWords } from './flagLevelWords.ts';

const columns: readonly Column[] = [
  { heading: phrase`Flag`, align: 'left', share: 0 },
  { heading: phrase`Level`, align: 'left', share: 0 },
  { heading: phrase`What`, align: 'left', share: 1 },
];

/**
 * What the plan must still settle, fix or warn of, under the names that the plan shows; what somebody
 * accepted says by whom and why.
 */
export const flagTable = (
  site: Pick<Site, 'acceptances'>,
  { flags }: Pick<Layout, 'flags'>,
): Table => ({
  title: phrase`Flags`,
  columns,
  rows: flags.map((flag, n) => {
    const accepted = acceptedAs(site, flag);
    const said = accepted === null ? '' : ` ${acceptedText(accepted.acceptance)}.`;
    return [flagName(n), flagLevelWords[flag.level], `${flag.message}${said}`];
  }),
});
