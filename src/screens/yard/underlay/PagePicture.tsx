import { useEffect, useRef, useState } from 'react';
import { phrase } from '../../../phrases/phrase.ts';
import type { OpenPdf } from '../../pictures/openPdf.ts';

interface Props {
  readonly pdf: OpenPdf;
  readonly n: number;
}

/** Pixels on the longer side of a page that is looked at. */
const side = 700;

/** A page of a PDF as it looks, small. */
export const PagePicture = ({ pdf, n }: Props) => {
  const canvas = useRef<HTMLCanvasElement>(null);
  const [fault, setFault] = useState<string | null>(null);
  useEffect(() => {
    let here = true;
    void pdf.draw(n, side).then((page) => {
      if (!here) return;
      setFault(page.ok ? null : page.reason);
      const element = canvas.current;
      if (!page.ok || element === null) return;
      element.width = page.value.width;
      element.height = page.value.height;
      element.getContext('2d')?.drawImage(page.value, 0, 0);
      page.value.close();
    });
    return () => {
      here = false;
    };
  }, [pdf, n]);
  return (
    <>
      <canvas ref={canvas} className="page-picture" role="img" aria-label={phrase`Page ${n}`} />
      {fault !== null && (
        <p className="fault" role="alert">
          {fault}
        </p>
      )}
    </>
  );
};
