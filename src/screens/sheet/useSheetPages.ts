import { useDeferredValue, useEffect, useMemo, useState } from 'react';
import type { Page } from '../../drawing/sheet/page.ts';
import type { SetProgress } from '../../drawing/sheet/sheetSet.ts';
import { language as screenSpeaks } from '../../phrases/speak.ts';
import { sheetText } from '../../site/sheetText.ts';
import { useBench, useSession, useSite } from '../bench.ts';
import { drawSheets } from './drawSheets.ts';
import { paperOf } from './paperOf.ts';
import type { SheetCall } from './sheetCall.ts';

/** How the drawing of the set stands. */
export type SheetStands =
  | { readonly is: 'drawing'; readonly progress: SetProgress | null }
  | { readonly is: 'drawn' }
  | { readonly is: 'stopped' }
  | { readonly is: 'failed'; readonly why: string };

/** A set that was drawn, and what it is of. */
export interface DrawnSet {
  readonly pages: readonly Page[];
  readonly call: SheetCall;
}

/** The pages of the crew sheet as far as they are drawn, and what can be done about the rest. */
export interface SheetPages {
  /** The set before while the next is drawn; null before the first is. */
  readonly drawn: DrawnSet | null;
  readonly stands: SheetStands;
  readonly stop: () => void;
  readonly again: () => void;
}

/** What was last heard of a set. */
interface Heard {
  readonly call: SheetCall;
  readonly stands: SheetStands;
}

const begun: SheetStands = { is: 'drawing', progress: null };

/** The pages of the crew sheet for the paper and the reader that are chosen, drawn away from the screen. */
export const useSheetPages = (): SheetPages => {
  const bench = useBench();
  const site = useDeferredValue(useSite());
  const sheet = useSession((state) => state.sheet);
  const [drawn, setDrawn] = useState<DrawnSet | null>(null);
  const [heard, setHeard] = useState<Heard | null>(null);
  const [repeated, setRepeated] = useState<SheetCall | null>(null);
  const made = useMemo((): SheetCall => {
    const siteText = sheetText(bench.site.getState().drawn(site));
    const reader = sheet.reader === 'all' ? {} : { reader: sheet.reader };
    const options = { ...paperOf(sheet, site), ...reader, siteText };
    return { site, options, language: sheet.language ?? screenSpeaks(), wanted: 'pages' };
  }, [bench, site, sheet]);
  // the same set once more is another call
  const call = repeated?.options === made.options ? repeated : made;
  const stands = heard?.call === call ? heard.stands : begun;
  const isStopped = stands.is === 'stopped';
  useEffect(() => {
    if (isStopped) return undefined;
    const tell = (said: SheetStands) => setHeard({ call, stands: said });
    const drawing = drawSheets(call, (answer) => {
      if (answer.do === 'progress') tell({ is: 'drawing', progress: answer.progress });
      if (answer.do === 'failed') tell({ is: 'failed', why: answer.why });
      if (answer.do !== 'pages') return;
      setDrawn({ pages: answer.pages, call });
      tell({ is: 'drawn' });
    });
    return drawing.stop;
  }, [call, isStopped]);
  return {
    drawn,
    stands,
    stop: () => setHeard({ call, stands: { is: 'stopped' } }),
    again: () => setRepeated({ ...made }),
  };
};
