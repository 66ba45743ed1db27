import { useEffect, useMemo, type ReactNode } from 'react';
import { SeenContext, useBench } from './bench.ts';
import { calmSite } from './calmSite.ts';

/** Shows in it the document and its layout at a calmer pace than the hand moves: see `calmSite`. */
export const Calmly = ({ children }: { readonly children: ReactNode }) => {
  const bench = useBench();
  const seen = useMemo(() => calmSite(bench), [bench]);
  useEffect(() => seen.follow(), [seen]);
  return <SeenContext value={seen}>{children}</SeenContext>;
};
