import { useEffect, useState } from 'react';
import { phrase } from '../../../phrases/phrase.ts';
import type { OpenPdf } from '../../pictures/openPdf.ts';
import { unread, type Parsed } from '../../../units/parsed.ts';

/** A PDF while it is on the screen, or one line why it cannot be; null while it is being opened. */
export const usePdf = (file: File): Parsed<OpenPdf> | null => {
  const [opened, setOpened] = useState<Parsed<OpenPdf> | null>(null);
  useEffect(() => {
    let here = true;
    let close = (): void => undefined;
    const open = async (): Promise<Parsed<OpenPdf>> => {
      try {
        // the reader is large, and most yards have no PDF
        const { openPdf } = await import('../../pictures/openPdf.ts');
        return await openPdf(file);
      } catch {
        return unread(phrase`the PDF reader is not on this device yet, and there is no connection`);
      }
    };
    void open().then((pdf) => {
      if (pdf.ok) close = pdf.value.close;
      if (here) setOpened(pdf);
      else close();
    });
    return () => {
      here = false;
      close();
    };
  }, [file]);
  return opened;
};
