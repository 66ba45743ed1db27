import type { AsSet } from '../../../site/asSet.ts';
import { recordAsSet } from '../../../site/edits/recordAsSet.ts';
import type { GateId } from '../../../site/ids.ts';
import { useSite } from '../../bench.ts';
import { useDo, useEdit } from '../../yard/cards/useEdit.ts';

/** What the crew set of a gate, and the ways to put it down: an edit each, which undo takes back. */
export const useAsSet = (gate: GateId) => {
  const edit = useEdit();
  const make = useDo();
  const asSet = useSite().gates[gate]?.asSet ?? null;
  return {
    asSet,
    /** Null when it was kept, else the one line for the field. */
    record: (label: string, next: AsSet): string | null =>
      edit(label, (site) => recordAsSet(site, gate, next)),
    forget: () => make('Forget what was set', (site) => recordAsSet(site, gate, null)),
  };
};
