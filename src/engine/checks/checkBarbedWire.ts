import { slack } from '../../geometry/tolerance.ts';
import type { Site } from '../../site/site.ts';
import { leastBarbed } from '../../trade/barbedWire.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import type { Flag } from '../flag.ts';
import type { LineLayout } from '../layout.ts';
import type { LaidLines } from '../posts/layLines.ts';
import { lineName } from './names.ts';
import { phrase } from '../../phrases/phrase.ts';

/**
 * Barbed wire over a fence: lower over the ground than is published, a settle; and in any case a caution,
 * since towns rule on it. Its lowest strand counts as at the top of the fabric.
 */
export const checkBarbedWire = (site: Site, laid: LaidLines): Flag[] =>
  Object.values<LineLayout>(laid.lines).flatMap((line): Flag[] => {
    const spec = site.specs[site.lines[line.id]?.spec ?? 'spec:'];
    const at = line.legs[0]?.start;
    if (spec?.barbedWire == null || at === undefined) return [];
    const place = { kind: 'line', id: line.id } as const;
    const lowest = inches(spec.gapUnder + spec.fabricHeight);
    const { length, source } = leastBarbed;
    const [is, least] = [lowest, length].map((one) => formatLength(one, site.lengths));
    const name = lineName(site, line.id);
    const low: Flag[] =
      lowest >= length - slack
        ? []
        : [
            {
              level: 'settle',
              rule: 'barbed wire low',
              place,
              at,
              message: phrase`${name} has barbed wire from ${is ?? ''} over the ground: expected ${least ?? ''} at least (${source.text}).`,
            },
          ];
    const message = phrase`${name} has barbed wire: many towns forbid it, or ask for more height, beside walks, homes and schools, and for arms that stay on the property; ask there.`;
    return [...low, { level: 'caution', rule: 'barbed wire', place, at, message }];
  });
