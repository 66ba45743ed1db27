import { useBench } from '../bench.ts';
import { useStored } from '../useStored.ts';
import { BringSheet } from './BringSheet.tsx';

/** The sheet of the file that waits to be brought in, over whatever screen there is. */
export const BringOver = () => {
  const { bring } = useBench();
  const file = useStored(bring, (waiting) => waiting);
  if (file === null) return null;
  return (
    <BringSheet
      key={`${file.name} ${file.lastModified}`}
      file={file}
      onDone={() => bring.setState(null, true)}
    />
  );
};
