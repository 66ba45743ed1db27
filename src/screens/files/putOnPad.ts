import type { Site } from '../../site/site.ts';
import { noCalls } from '../../store/callsAtHand.ts';
import type { Bench } from '../bench.ts';
import { fitAll } from '../fitAll.ts';
import { keepLook } from '../jobs/keepLook.ts';

/** Another document for the pad, and what undo calls the change. */
export interface Opened {
  readonly site: Site;
  readonly label: string;
}

/** Takes the job off the pad and begins another with a document; undo brings the old one back. */
export const putOnPad = (bench: Bench, { site, label }: Opened): void => {
  bench.session.setState({ selection: null, tool: 'select', say: '', calls: noCalls });
  void keepLook(bench);
  bench.site.getState().load(site, label);
  fitAll(bench);
};
