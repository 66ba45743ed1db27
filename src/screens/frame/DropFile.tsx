import { useEffect } from 'react';
import { useBench } from '../bench.ts';
import type { FileHandle } from '../files/filePickers.ts';
import { openOwn, withFiles } from '../files/ownFile.ts';
import { takeFile } from '../files/takeFile.ts';

interface WithHandle {
  readonly getAsFileSystemHandle?: () => Promise<FileSystemHandle | null>;
}

/** The file behind what was dropped, to be written again, where the browser has it; else null. */
const handleOf = async (item: DataTransferItem | undefined): Promise<FileHandle | null> => {
  const ask = (item as WithHandle | undefined)?.getAsFileSystemHandle;
  const handle = (await ask?.call(item).catch(() => null)) ?? null;
  return handle?.kind === 'file' ? (handle as FileHandle) : null;
};

/** Lets a site file, or one to bring in, be dropped anywhere on the program. */
export const DropFile = () => {
  const bench = useBench();
  useEffect(() => {
    const over = (event: DragEvent) => event.preventDefault();
    const drop = (event: DragEvent) => {
      event.preventDefault();
      const file = event.dataTransfer?.files[0];
      if (file === undefined) return;
      // has to be asked for before the event is over
      const handle = handleOf(event.dataTransfer?.items[0]);
      void withFiles(bench, async () => {
        const kept = await handle;
        await (kept === null ? takeFile(bench, file) : openOwn(bench, kept));
      });
    };
    window.addEventListener('dragover', over);
    window.addEventListener('drop', drop);
    return () => {
      window.removeEventListener('dragover', over);
      window.removeEventListener('drop', drop);
    };
  }, [bench]);
  return null;
};
