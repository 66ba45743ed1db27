import { isMetric } from '../../../units/isMetric.ts';
import { useDeferredValue, useMemo } from 'react';
import type { CallTerms } from '../../../engine/calls/callRemarks.ts';
import type { Calls } from '../../../engine/calls/calls.ts';
import { readCalls } from '../../../engine/calls/readCalls.ts';
import { traverse, type Traverse } from '../../../engine/calls/traverse.ts';
import type { LandUnit } from '../../../units/landUnits.ts';
import { read, type Parsed } from '../../../units/parsed.ts';
import { useSession, useSite } from '../../bench.ts';
import { rodStyle } from '../levels/rodStyle.ts';

/** Calls as they were read, what follows from them, and how they are judged and written. */
export interface ReadCalls {
  readonly calls: Calls;
  readonly told: Traverse;
  readonly terms: CallTerms;
}

/** What a distance without a unit is in: as was said, else as the site's own lengths. */
export const useCallUnit = (): LandUnit['name'] => {
  const { system } = useSite().lengths;
  const said = useSession(({ calls }) => calls.unit);
  return said ?? (isMetric(system) ? 'metres' : 'feet');
};

/** The calls at hand; they may lag behind the typing, so that the hand never waits. */
export const useCalls = (): Parsed<ReadCalls> => {
  const { lengths } = useSite();
  const { parts } = useSession(({ calls }) => calls);
  const text = useDeferredValue(useSession(({ calls }) => calls.text));
  const unit = useCallUnit();
  const found = useMemo(() => {
    const calls = readCalls(text, unit);
    return calls.ok ? read({ calls: calls.value, told: traverse(calls.value) }) : calls;
  }, [text, unit]);
  return found.ok ? read({ ...found.value, terms: { parts, style: rodStyle(lengths) } }) : found;
};
