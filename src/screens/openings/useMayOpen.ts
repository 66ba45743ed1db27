import { useMemo } from 'react';
import { mayOpenText } from '../../drawing/tables/mayOpenText.ts';
import type { GateLayout } from '../../engine/layout.ts';
import { useLayout, useSite } from '../bench.ts';

/** Which way a gate may open and what it meets, in words; null where no leaf is on hinges. */
export const useMayOpen = (gate: GateLayout): string | null => {
  const site = useSite();
  const layout = useLayout();
  return useMemo(() => mayOpenText(site, layout, gate), [site, layout, gate]);
};
