import { midpoint } from '../../geometry/midpoint.ts';
import type { Site } from '../../site/site.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import type { Flag } from '../flag.ts';
import type { LaidLines } from '../posts/layLines.ts';
import type { LaidRun } from '../posts/layRuns.ts';
import { lineName } from './names.ts';
import { phrase } from '../../phrases/phrase.ts';

/** Panels that rise by less than this from post to post are as good as level: inches; ours. */
const told = 0.5;

const hasPanels = ({ seated: { spec } }: LaidRun): boolean => spec.infill.kind === 'panels';

/** Panels that would have to lean with the ground, once a run, where they lean the most. */
export const checkPanels = (site: Site, laid: LaidLines): Flag[] =>
  laid.runs.filter(hasPanels).flatMap(({ run }): Flag[] => {
    const bays = (run.ground?.fences ?? [])
      .filter(({ way }) => way === 'follow')
      .flatMap((fence) =>
        fence.bays.map((bay, n) => ({
          rise: Math.abs(bay.to.z - bay.from.z),
          posts: [fence.stands[n], fence.stands[n + 1]],
        })),
      );
    const [most] = bays.toSorted((a, b) => b.rise - a.rise);
    if (most === undefined || most.rise < told) return [];
    const [a, b] = most.posts.map((id) => laid.posts.get(id ?? 'post:'));
    if (a === undefined || b === undefined) return [];
    const rise = formatLength(inches(most.rise), fineStyle(site.lengths));
    return [
      {
        level: 'caution',
        rule: 'panels lean with the ground',
        place: { kind: 'leg', line: run.line, id: run.legs[0] ?? 'vertex:' },
        at: midpoint(a.at, b.at),
        message: phrase`${lineName(site, run.line)}: between posts ${a.tag} and ${b.tag} the ground rises ${rise} under one panel: how far a panel may lean is for its maker to say; else let the leg step.`,
      },
    ];
  });
