import { useEffect, useRef, useState } from 'react';
import type { SetProgress } from '../../drawing/sheet/sheetSet.ts';
import { phrase } from '../../phrases/phrase.ts';
import { withLook } from '../../store/tour.ts';
import { useBench } from '../bench.ts';
import { download } from '../files/download.ts';
import { drawSheets, type Drawing } from './drawSheets.ts';
import type { SheetCall } from './sheetCall.ts';

/** A set on its way to a file: how far it is, null while there is none. */
export interface SetFile {
  readonly progress: SetProgress | null;
  readonly save: (name: string, call: SheetCall) => void;
  readonly stop: () => void;
}

/** Saves a set as a PDF that is made away from the screen; says so, or in one line why there is none. */
export const useSetFile = (): SetFile => {
  const { session } = useBench();
  const [progress, setProgress] = useState<SetProgress | null>(null);
  const running = useRef<Drawing | null>(null);
  const end = (say: string) => {
    running.current = null;
    setProgress(null);
    session.setState({ say });
  };
  // who leaves the screen has no use for it any more
  useEffect(() => () => running.current?.stop(), []);
  return {
    progress,
    save: (name, call) => {
      running.current?.stop();
      setProgress({ done: 0, of: 1 });
      running.current = drawSheets(call, (answer) => {
        if (answer.do === 'progress') setProgress(answer.progress);
        if (answer.do === 'failed') end(phrase`The PDF could not be made: ${answer.why}`);
        if (answer.do !== 'pdf') return;
        download({ name, type: 'application/pdf', content: answer.bytes });
        end(phrase`Saved ${name}`);
        session.setState(({ tour }) => ({ tour: withLook(tour, 'sheet') }));
      });
    },
    stop: () => {
      running.current?.stop();
      end(phrase`The PDF was stopped`);
    },
  };
};
