import type { Page } from '../../drawing/sheet/page.ts';
import { sheetSteps } from '../../drawing/sheet/sheetSet.ts';
import { layOutSite } from '../../engine/layOutSite.ts';
import type { SheetAnswer, SheetCall } from './sheetCall.ts';
import { makePdf } from './makePdf.ts';

type Say = (answer: SheetAnswer) => void;

/** Draws one set of sheets, and says between them how far it is. */
const drawn = ({ site, options }: SheetCall, say: Say): readonly Page[] => {
  const steps = sheetSteps(site, layOutSite(site), options);
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
    say({ do: 'progress', progress: step.value });
  }
};

/** A set of sheets as it is asked for; `say` hears between them how far it is. */
export const answerSheetCall = async (call: SheetCall, say: Say): Promise<SheetAnswer> => {
  const pages = drawn(call, say);
  const { site, options, wanted } = call;
  if (wanted === 'pages') return { do: 'pages', pages };
  const { siteText } = options;
  const set = { sort: 'Crew sheet', siteText, file: wanted.pdfWith } as const;
  const bytes = await makePdf({ pages, site, ...set });
  return { do: 'pdf', bytes: new Uint8Array(bytes) };
};
