import { slack } from '../../geometry/tolerance.ts';
import { isWoven } from '../../site/isWoven.ts';
import type { Site } from '../../site/site.ts';
import { leastTwistedMesh } from '../../trade/selvage.ts';
import { formatLength } from '../../units/formatLength.ts';
import type { Flag } from '../flag.ts';
import type { LaidLines } from '../posts/layLines.ts';
import { fabricOf } from '../structure/fabricOf.ts';
import { firstLines } from '../structure/firstLines.ts';
import { asItIs, phrase } from '../../phrases/phrase.ts';

/** Fabric of a narrow mesh whose edges are said to be twisted, once a build at its first line. */
export const checkSelvage = (site: Site, laid: LaidLines): Flag[] =>
  [...firstLines(site, laid)].flatMap(([id, line]): Flag[] => {
    const [spec, at] = [site.specs[id], laid.lines[line]?.legs[0]?.start];
    if (spec === undefined || at === undefined || !isWoven(spec)) return [];
    const { mesh } = fabricOf(spec);
    const { length, source } = leastTwistedMesh;
    if (spec.selvage === null || spec.selvage === 'knuckled both edges') return [];
    if (mesh >= length - slack) return [];
    const say = (size: typeof mesh) => formatLength(size, site.lengths);
    return [
      {
        level: 'caution',
        rule: 'twisted edge of a narrow mesh',
        place: { kind: 'line', id: line },
        at,
        message: phrase`${asItIs(spec.label)}: a mesh of ${say(mesh)} with a twisted edge: below ${say(length)} edges are knuckled (${source.text}).`,
      },
    ];
  });
