import { speakNamed } from '../speakNamed.ts';
import type { SheetAnswer, SheetCall } from './sheetCall.ts';

const say = (answer: SheetAnswer): void =>
  self.postMessage(answer, { transfer: answer.do === 'pdf' ? [answer.bytes.buffer] : [] });

const drawer = speakNamed(() => import('./answerSheetCall.ts'));

/** Sets of sheets are drawn here, so that the pad never stops for them. */
self.addEventListener('message', ({ data }: MessageEvent<SheetCall>) => {
  const answered = drawer.then(({ answerSheetCall }) =>
    answerSheetCall(data, say).then(say, (error: unknown) => {
      const why = error instanceof Error ? error.message : String(error);
      say({ do: 'failed', why: why.split('\n')[0] ?? '' });
    }),
  );
  // where it cannot be had the worker has failed
  answered.catch(() => undefined);
});
