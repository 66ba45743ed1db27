import { useMemo } from 'react';
import { standingsOf, type GateStanding } from '../../engine/sign/standingsOf.ts';
import { useLayout, useSite } from '../bench.ts';

/** How every gate's sign-off stands, in the order of the layout. */
export const useStandings = (): readonly GateStanding[] => {
  const site = useSite();
  const layout = useLayout();
  return useMemo(() => standingsOf(site, layout), [site, layout]);
};
