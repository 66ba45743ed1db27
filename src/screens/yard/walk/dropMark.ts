import { deviationOf95 } from '../../../engine/walk/radius95.ts';
import { roughText } from '../../../engine/walk/roughText.ts';
import { phrase, phraseOf } from '../../../phrases/phrase.ts';
import { addFix } from '../../../site/edits/addFix.ts';
import { freshName } from '../../../site/freshName.ts';
import { nextId } from '../../../site/nextId.ts';
import { attempt } from '../../attempt.ts';
import type { Bench } from '../../bench.ts';
import type { WalkPlace } from './walkPlace.ts';
import { roughest } from './walkText.ts';

/**
 * Drops a mark where the walk is, in one step of undo with the place on earth that the drawing has from
 * then on; it is selected, and one line says how rough it is.
 */
export const dropMark = (bench: Bench, { at, origin, radius }: WalkPlace): void => {
  const { site, session } = bench;
  const { marks, lengths } = site.getState().history.present.site;
  const label = freshName(
    `${phraseOf('mark')`Walk`} `,
    Object.values(marks).map((mark) => mark.label),
  );
  const id = nextId(site.getState().history.present.site, 'mark');
  const accuracy = deviationOf95(radius);
  const fault = attempt(bench, {
    label: phrase`Drop mark by GPS`,
    on: (was) => addFix(was, { at, accuracy, label, origin }),
  });
  const within = roughText(radius, lengths);
  const rough = phrase`${label} is kept, and it is rough: within ${within}. Average, or wait for open sky`;
  const said =
    radius > roughest ? rough : phrase`${label} is rough, within ${within}: tape what matters`;
  session.setState(
    fault === null ? { selection: { kind: 'mark', id }, say: said } : { say: fault },
  );
};
