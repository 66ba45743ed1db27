import type { AsSet } from '../../../site/asSet.ts';
import { recordAsSet } from '../../../site/edits/recordAsSet.ts';
import type { GateId } from '../../../site/ids.ts';
import { useSite } from '../../bench.ts';
import { useDo, useEdit } from '../../yard/cards/useEdit.ts';
import { phrase } from '../../../phrases/phrase.ts';

/** Keeps a set record under a label that undo shows; null when kept, else the line for the field. */
export type Recorder = (label: string, next: AsSet) => string | null;

/** What the crew set of a gate, and the ways to put it down: an edit each, which undo takes back. */
export const useAsSet = (gate: GateId) => {
  const edit = useEdit();
  const make = useDo();
  const asSet = useSite().gates[gate]?.asSet ?? null;
  const record: Recorder = (label, next) => edit(label, (site) => recordAsSet(site, gate, next));
  return {
    asSet,
    record,
    forget: () => make(phrase`Forget what was set`, (site) => recordAsSet(site, gate, null)),
  };
};
