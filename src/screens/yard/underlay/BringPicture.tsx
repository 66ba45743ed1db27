import { useRef } from 'react';
import { phrase } from '../../../phrases/phrase.ts';
import { useBench } from '../../bench.ts';
import { bringPicture } from '../../pictures/bringPicture.ts';

/** The key that brings a picture or a page under the drawing. */
export const BringPicture = ({ label }: { readonly label: string }) => {
  const bench = useBench();
  const chooser = useRef<HTMLInputElement>(null);
  return (
    <>
      <button type="button" onClick={() => chooser.current?.click()}>
        {label}
      </button>
      <input
        ref={chooser}
        className="unseen"
        type="file"
        accept="image/jpeg,image/png,image/webp,application/pdf,.pdf"
        aria-label={phrase`Picture or PDF to put under the drawing`}
        tabIndex={-1}
        onChange={(event) => {
          const file = event.target.files?.[0];
          event.target.value = '';
          if (file !== undefined) void bringPicture(bench, file);
        }}
      />
    </>
  );
};
