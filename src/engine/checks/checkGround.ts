import { sum, inches } from '../../units/inches.ts';
import type { FenceSpec } from '../../site/fenceSpec.ts';
import { theInfill } from '../../site/infillWord.ts';
import type { Site } from '../../site/site.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { gapUnder, type Room } from '../ground/gapUnder.ts';
import type { Carry } from '../carry/carry.ts';
import type { Flag } from '../flag.ts';
import type { Run } from '../layout.ts';
import type { LaidLines } from '../posts/layLines.ts';
import { onTape } from '../set/setCase.ts';
import type { StretchOnGrade } from '../posts/fencesOn.ts';
import { lineName } from './names.ts';
import { phrase } from '../../phrases/phrase.ts';

type Say = (length: number) => string;

const legOf = (run: Run): Flag['place'] => ({
  kind: 'leg',
  line: run.line,
  id: run.legs[0] ?? 'vertex:',
});

const clashFlags = (laid: LaidLines, say: Say): Flag[] =>
  (laid.ground?.clashes ?? []).map(({ other, at, higher }) => ({
    level: 'settle',
    rule: 'shots on one spot differ',
    place: { kind: 'shot', id: other as `shot:${string}` },
    at,
    message: phrase`Two shots on one spot differ by ${say(Math.abs(higher))}: expected one height; the first one counts.`,
  }));

const outsideFlags = (site: Site, run: Run, say: Say): Flag[] => {
  if (run.wall !== null) return [];
  const unknown = run.ground?.profile.unknown ?? [];
  const length = sum(unknown.map(({ from, to }) => inches(to - from)));
  if (run.ground !== null && length <= 1 / 64) return [];
  const what = run.ground === null ? phrase`all of a run` : phrase`${say(length)} of a run`;
  return [
    {
      level: 'settle',
      rule: 'ground not known',
      place: legOf(run),
      at: run.start,
      message: phrase`${lineName(site, run.line)}: ${what} lies outside of the shots: lengths and heights there are those on the level; expected shots on both sides of it.`,
    },
  ];
};

interface Worst {
  readonly size: number;
  readonly room: Room;
  readonly bay: number;
}

const worstOf = (run: Run, fence: StretchOnGrade, which: 'gap' | 'buried'): Worst | null =>
  fence.bays.reduce<Worst | null>((worst, edge, bay) => {
    const room = run.ground === null ? null : gapUnder(run.ground.profile, edge)[which];
    const size = Math.abs(room?.room ?? 0);
    return room !== null && size > (worst?.size ?? 0) ? { size, room, bay } : worst;
  }, null);

/** The worst room under the fabric of a stretch. */
interface Rooms {
  readonly fence: StretchOnGrade;
  readonly gap: Worst | null;
  readonly buried: Worst | null;
}

const roomsUnder = (run: Run): readonly Rooms[] =>
  (run.ground?.fences ?? []).map((fence) => ({
    fence,
    gap: worstOf(run, fence, 'gap'),
    buried: worstOf(run, fence, 'buried'),
  }));

const under = (
  laid: LaidLines,
  run: Run,
  { fence, gap, buried }: Rooms,
  { site, spec, say }: { readonly site: Site; readonly spec: FenceSpec; readonly say: Say },
): Flag[] => {
  /** Whether a length is as long as one mark of the tape. */
  const shows = (length: number) => length > 0 && onTape({ site }, length, 'floor') > 0;
  const tagOf = (n: number) => laid.posts.get(fence.stands[n] ?? 'post:')?.tag ?? '?';
  const between = ({ bay }: Worst) => phrase`Between posts ${tagOf(bay)} and ${tagOf(bay + 1)}`;
  const at = (worst: Worst) => {
    const share = worst.room.at / (run.ground?.profile.length ?? 1);
    return {
      x: run.start.x + (run.end.x - run.start.x) * share,
      y: run.start.y + (run.end.y - run.start.y) * share,
    };
  };
  const limit = spec.gapUnder;
  const infill = theInfill(spec.infill);
  return [
    ...(gap === null || !shows(gap.size - limit)
      ? []
      : [
          {
            level: 'settle' as const,
            rule: 'gap under the fabric',
            place: legOf(run),
            at: at(gap),
            message: phrase`${between(gap)} the ground lies ${say(gap.size)} below ${infill}: expected ${say(limit)} at most; hold a post there, or let ${infill} follow in shorter bays.`,
          },
        ]),
    ...(buried === null || !shows(buried.size)
      ? []
      : [
          {
            level: 'caution' as const,
            rule: 'fabric in the ground',
            place: legOf(run),
            at: at(buried),
            message: phrase`${between(buried)} the ground rises ${say(buried.size)} over the bottom of ${infill}: cut the high point (Caltrans Standard Specifications 80-3.03).`,
          },
        ]),
  ];
};

/** What the ground or a wall does to a fence, where it is known, and where it is not. */
export const checkGround = (site: Site, laid: LaidLines, carry: Carry): Flag[] => {
  const rooms = carry.shelf<readonly Rooms[]>('rooms under a run');
  const say: Say = (length) => formatLength(inches(length), fineStyle(site.lengths));
  const told = laid.ground !== null || laid.runs.some(({ run }) => run.ground !== null);
  const runs = told ? laid.runs.map(({ run }) => run) : [];
  return [
    ...clashFlags(laid, say),
    ...runs.flatMap((run) => {
      const spec = site.specs[site.lines[run.line]?.spec ?? 'spec:'];
      if (spec === undefined) return [];
      const found = rooms.take(run.id, [run], () => roomsUnder(run));
      return [
        ...(laid.ground === null ? [] : outsideFlags(site, run, say)),
        ...found.flatMap((room) => under(laid, run, room, { site, spec, say })),
      ];
    }),
  ];
};
