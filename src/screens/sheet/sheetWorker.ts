import { isLanguage } from '../../phrases/languages.ts';
import { speak } from '../../phrases/speak.ts';
import { lackingParts } from './lackingParts.ts';
import type { SheetAnswer, SheetCall } from './sheetCall.ts';

const say = (answer: SheetAnswer): void =>
  self.postMessage(answer, { transfer: answer.do === 'pdf' ? [answer.bytes.buffer] : [] });

/** What draws, in the language that this worker is named for: texts of tables are made when it is loaded. */
const drawer = (async () => {
  await speak(isLanguage(self.name) ? self.name : 'en');
  return import('./answerSheetCall.ts');
})();
// who calls is told
drawer.catch(() => undefined);

const answerTo = async (call: SheetCall): Promise<SheetAnswer> => {
  const { answerSheetCall } = await drawer.catch(() => {
    throw new Error(lackingParts);
  });
  return answerSheetCall(call, say);
};

/** Sets of sheets are drawn here, so that the pad never stops for them. */
self.addEventListener('message', ({ data }: MessageEvent<SheetCall>) => {
  answerTo(data).then(say, (error: unknown) => {
    const why = error instanceof Error ? error.message : String(error);
    say({ do: 'failed', why: why.split('\n')[0] ?? '' });
  });
});
