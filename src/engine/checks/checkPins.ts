import { anchoredAt } from '../../site/anchor.ts';
import type { LineId, PinId } from '../../site/ids.ts';
import { legAt } from '../../site/legGround.ts';
import { legTrack } from '../../site/legTrack.ts';
import type { Pin } from '../../site/pin.ts';
import type { Site } from '../../site/site.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import type { Flag } from '../flag.ts';
import type { LaidLines } from '../posts/layLines.ts';
import { lineName } from './names.ts';
import { phrase } from '../../phrases/phrase.ts';

/** Posts that are held where none can stand: in an opening, past the end of a leg, on another post. */
const unheld = (site: Site, laid: LaidLines): Flag[] =>
  (Object.entries(site.pins) as [PinId, Pin][]).flatMap(([id, pin]): Flag[] => {
    const line = site.lines[pin.line];
    if (pin.holds.kind !== 'post' || line === undefined) return [];
    if (laid.posts.get(`post:${id}`) !== undefined || laid.unfilled.has(pin.line)) return [];
    return [
      {
        level: 'settle',
        rule: 'held post without a place',
        place: { kind: 'leg', line: pin.line, id: pin.leg },
        at: anchoredAt(pin.anchor, legTrack(site, line, legAt(line, pin.leg))),
        message: phrase`${lineName(site, pin.line)}: a post is held where none can stand: expected a place on its leg, off openings and other posts.`,
      },
    ];
  });

interface Stretch {
  readonly length: number;
  readonly at: Flag['at'];
  readonly leg: `vertex:${string}`;
}

const stretchesOf = ({ lines }: LaidLines, id: LineId): Stretch[] => {
  const found = new Map<number, Stretch>();
  for (const run of lines[id]?.runs ?? []) {
    for (const space of run.spaces) {
      if (space.kind !== 'bay') continue;
      const known = found.get(space.stretch);
      const { start: at } = run;
      found.set(space.stretch, {
        length: (known?.length ?? 0) + space.length,
        at: known?.at ?? at,
        leg: known?.leg ?? run.legs[0] ?? 'vertex:',
      });
    }
  }
  return [...found.values()];
};

/** Stretches over the interval of their spec, in which no pull post finds room. */
const unpulled = (site: Site, laid: LaidLines): Flag[] =>
  (Object.keys(site.lines) as LineId[]).flatMap((id) => {
    const interval = site.specs[site.lines[id]?.spec ?? 'spec:']?.pullInterval ?? null;
    if (interval === null || laid.unfilled.has(id)) return [];
    return stretchesOf(laid, id).flatMap(({ length, at, leg }): Flag[] => {
      if (length <= interval + 1e-6) return [];
      const write = (size: number) => formatLength(inches(size), fineStyle(site.lengths));
      const message = phrase`${lineName(site, id)}: a stretch of ${write(length)} is ${write(length - interval)} longer than fabric is stretched at once: expected room for a pull post's hole on one of its line posts.`;
      return [
        {
          level: 'settle',
          rule: 'stretch over its pull',
          place: { kind: 'leg', line: id, id: leg },
          at,
          message,
        },
      ];
    });
  });

/** What was asked of places by hand, or of the length of a stretch, and cannot be had. */
export const checkPins = (site: Site, laid: LaidLines): Flag[] => [
  ...unheld(site, laid),
  ...unpulled(site, laid),
];
