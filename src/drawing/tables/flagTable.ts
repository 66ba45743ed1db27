import type { Layout } from '../../engine/layout.ts';
import { flagName } from '../plan/drawFlags.ts';
import type { Column, Table } from './table.ts';

const columns: readonly Column[] = [
  { heading: 'Flag', align: 'left', share: 0 },
  { heading: 'Level', align: 'left', share: 0 },
  { heading: 'What', align: 'left', share: 1 },
];

/** What the plan must still settle, fix or warn of, under the names that the plan shows. */
export const flagTable = ({ flags }: Pick<Layout, 'flags'>): Table => ({
  title: 'Flags',
  columns,
  rows: flags.map(({ level, message }, n) => [flagName(n), level, message]),
});
