import { speakNamed } from '../speakNamed.ts';
import type { ReaderAnswer, ReaderCall } from './fileReader.ts';

const say = (said: ReaderAnswer): void => self.postMessage(said, {});

const reader = speakNamed(() => import('./answerReaderCall.ts'));

/** Reads one file away from the screen, so that the pad answers meanwhile. */
self.addEventListener('message', ({ data }: MessageEvent<ReaderCall>) => {
  const answered = reader.then(({ answerReaderCall }) =>
    answerReaderCall(data).then(
      (answer) => answer !== null && say(answer),
      (error: unknown) => say({ kind: 'failed', why: String(error) }),
    ),
  );
  // where it cannot be had the worker has failed
  answered.catch(() => undefined);
});
