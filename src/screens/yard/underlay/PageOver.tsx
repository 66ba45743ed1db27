import { useBench } from '../../bench.ts';
import { useStored } from '../../useStored.ts';
import { PageSheet } from './PageSheet.tsx';

/** The sheet on which a page of a PDF is chosen, over whatever screen there is. */
export const PageOver = () => {
  const { page } = useBench();
  const file = useStored(page, (waiting) => waiting);
  if (file === null) return null;
  return (
    <PageSheet
      key={`${file.name} ${file.lastModified} ${file.size}`}
      file={file}
      onDone={() => page.setState(null, true)}
    />
  );
};
