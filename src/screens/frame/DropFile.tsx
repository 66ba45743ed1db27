import { useEffect } from 'react';
import { useBench } from '../bench.ts';
import { takeFile } from '../files/takeFile.ts';

/** Lets a site file, or one to bring in, be dropped anywhere on the program. */
export const DropFile = () => {
  const bench = useBench();
  useEffect(() => {
    const over = (event: DragEvent) => event.preventDefault();
    const drop = (event: DragEvent) => {
      event.preventDefault();
      const file = event.dataTransfer?.files[0];
      if (file !== undefined) void takeFile(bench, file);
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
