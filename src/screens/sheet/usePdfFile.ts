import { useState } from 'react';
import { phrase } from '../../phrases/phrase.ts';
import { useBench } from '../bench.ts';
import { download } from '../files/download.ts';

/** Saves a PDF under a name once it is made; says so, or that its parts cannot be had. Busy until then. */
export const usePdfFile = () => {
  const { session } = useBench();
  const [busy, setBusy] = useState(false);
  const save = async (name: string, make: () => Promise<Uint8Array>): Promise<void> => {
    setBusy(true);
    try {
      download({ name, type: 'application/pdf', content: new Uint8Array(await make()) });
      session.setState({ say: phrase`Saved ${name}` });
    } catch {
      session.setState({
        say: phrase`The PDF could not be made: its parts are not on this device yet, and there is no connection`,
      });
    }
    setBusy(false);
  };
  return { busy, save };
};
