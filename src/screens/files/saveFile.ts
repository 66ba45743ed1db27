import { saveSite } from '../../site/saveSite.ts';
import type { Bench } from '../bench.ts';
import { download } from './download.ts';
import { fileStem } from './fileStem.ts';

/** Saves the document as a site file, named for the job. A running gesture is not saved. */
export const saveFile = ({ site, session }: Bench): void => {
  const { history, drawn } = site.getState();
  const document = drawn(history.present.site);
  const name = `${fileStem(document.job.name)}.site.json`;
  download({ name, type: 'application/json', content: saveSite(document) });
  session.setState({ say: `Saved ${name}` });
};
