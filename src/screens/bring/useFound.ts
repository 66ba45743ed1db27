import { useEffect, useMemo, useState } from 'react';
import type { PointOrder } from '../../importers/csv/pointColumns.ts';
import { mostBytes } from '../../importers/fileText.ts';
import type { FileUnit } from '../../importers/fileUnit.ts';
import { usualUnit } from '../../importers/usualUnit.ts';
import { phrase } from '../../phrases/phrase.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { useSite } from '../bench.ts';
import { readInWorker, type FileReading } from './fileReader.ts';
import type { FoundSummary } from './foundSummary.ts';

/** How a person wants a file read; null for what the file says. */
export interface ReadAs {
  readonly unit: FileUnit | null;
  readonly order: PointOrder | null;
}

/** What a file has, and how the things themselves are had. */
export interface FileFound extends Pick<FileReading, 'pick'> {
  readonly summary: FoundSummary;
}

/** What one way of reading a file came to. */
interface Answer {
  readonly to: unknown;
  readonly found: Parsed<FileFound>;
}

const bytesOf = async (file: File): Promise<Parsed<Uint8Array<ArrayBuffer>>> => {
  if (file.size > mostBytes)
    return unread(phrase`too large: expected at most ${mostBytes / 2 ** 20} MB`);
  try {
    return read(new Uint8Array(await file.arrayBuffer()));
  } catch {
    return unread(phrase`cannot be read from this device`);
  }
};

/** What a file has, read anew for each way of reading it; null while it is being read. */
export const useFound = (file: File, { unit, order }: ReadAs): Parsed<FileFound> | null => {
  const { origin, lengths } = useSite();
  const usual = usualUnit(lengths.system);
  const asked = useMemo(
    () => ({ file, how: { name: file.name, unit, order, usual, origin } }),
    [file, unit, order, usual, origin],
  );
  const [answer, setAnswer] = useState<Answer | null>(null);
  useEffect(() => {
    let [reading, left]: [FileReading | null, boolean] = [null, false];
    const said = (found: Parsed<FileFound>) => (left ? undefined : setAnswer({ to: asked, found }));
    void bytesOf(asked.file).then(async (bytes) => {
      if (left) return undefined;
      if (!bytes.ok) return said(bytes);
      reading = readInWorker({ ...asked.how, bytes: bytes.value });
      const { pick } = reading;
      const summary = await reading.summary;
      return said(summary.ok ? read({ summary: summary.value, pick }) : summary);
    });
    return () => {
      left = true;
      reading?.stop();
    };
  }, [asked]);
  return answer?.to === asked ? answer.found : null;
};
