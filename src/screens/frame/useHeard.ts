import { useEffect, useState } from 'react';
import { heard, type Told } from '../../editor/list/heard.ts';
import { yardList } from '../../editor/list/yardList.ts';
import { phrase } from '../../phrases/phrase.ts';
import type { History } from '../../store/history.ts';
import { useBench, type Bench } from '../bench.ts';

/** Edits and selections that follow each other within this are told together; milliseconds. */
const together = 250;

const toldOf = ({ site, session, layOut }: Bench): Told => {
  const { present } = site.getState().history;
  return {
    groups: yardList(present.site, layOut(present.site)),
    selection: session.getState().selection,
  };
};

/** What led from one history to another, as undo names it; null where the document is the same. */
const labelOf = (was: History, now: History): string | null => {
  if (was.present.site === now.present.site) return null;
  if (now.future[0] === was.present) return phrase`Undone: ${was.present.label}`;
  return was.future[0] === now.present
    ? phrase`Done again: ${now.present.label}`
    : now.present.label;
};

/** What one hears of the last edit or selection, by names and figures; empty before there was one. */
export const useHeard = (): string => {
  const bench = useBench();
  const [said, setSaid] = useState('');
  useEffect(() => {
    const { site, session } = bench;
    let was = { told: toldOf(bench), history: site.getState().history };
    let timer: ReturnType<typeof setTimeout> | undefined;
    const tell = () => {
      const now = { told: toldOf(bench), history: site.getState().history };
      const line = heard(was.told, now.told, labelOf(was.history, now.history));
      was = now;
      if (line !== '') setSaid(line);
    };
    const soon = () => {
      clearTimeout(timer);
      timer = setTimeout(tell, together);
    };
    const offSite = site.subscribe((now, before) => {
      if (now.history.present !== before.history.present) soon();
    });
    const offSession = session.subscribe((now, before) => {
      if (now.selection !== before.selection) soon();
    });
    return () => {
      clearTimeout(timer);
      offSite();
      offSession();
    };
  }, [bench]);
  return said;
};
