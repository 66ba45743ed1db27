import type { Page } from '../../drawing/sheet/page.ts';
import { sheetSteps } from '../../drawing/sheet/sheetSet.ts';
import { layOutSite } from '../../engine/layOutSite.ts';
import type { SheetAnswer, SheetCall } from './sheetCall.ts';
import { makePdf } from './makePdf.ts';

const say = (answer: SheetAnswer): void =>
  self.postMessage(answer, { transfer: answer.do === 'pdf' ? [answer.bytes.buffer] : [] });

/** Draws one set of sheets, and says between them how far it is. */
const drawn = ({ site, options }: SheetCall): readonly Page[] => {
  const steps = sheetSteps(site, layOutSite(site), options);
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
    say({ do: 'progress', progress: step.value });
  }
};

const answerTo = async (call: SheetCall): Promise<SheetAnswer> => {
  const pages = drawn(call);
  const { site, options, wanted } = call;
  if (wanted === 'pages') return { do: 'pages', pages };
  const { siteText } = options;
  const set = { sort: 'Crew sheet', siteText, file: wanted.pdfWith } as const;
  const bytes = await makePdf({ pages, site, ...set });
  return { do: 'pdf', bytes: new Uint8Array(bytes) };
};

/** Sets of sheets are drawn here, so that the pad never stops for them. */
self.addEventListener('message', ({ data }: MessageEvent<SheetCall>) => {
  answerTo(data).then(say, (error: unknown) => {
    const why = error instanceof Error ? error.message : String(error);
    say({ do: 'failed', why: why.split('\n')[0] ?? '' });
  });
});
