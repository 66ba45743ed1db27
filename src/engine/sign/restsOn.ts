import type { Gate } from '../../site/gate.ts';
import type { HardwareId } from '../../site/ids.ts';
import type { SignOff } from '../../site/signOff.ts';
import type { Site } from '../../site/site.ts';
import { formatAngle } from '../../units/formatAngle.ts';
import type { GateLayout, Layout } from '../layout.ts';
import { leavesOf } from '../gate/termsOf.ts';
import type { PostId } from '../post.ts';

/** What an opening rests on, by what it is called; lengths are numbers, in inches. */
export type Rested = SignOff['rested'];

const otherSide = { left: 'right', right: 'left' } as const;
const unknown = 'not said';

/** The side to which a leaf opens as seen from its hinges: the same however its line is drawn. */
const handOf = (gate: Gate, n: number, count: number): 'left' | 'right' => {
  const fromStart = count === 1 ? gate.hingedAt === 'start' : n === 0;
  return fromStart ? gate.opens : otherSide[gate.opens];
};

const partRests = (site: Site, called: string, id: HardwareId | null): Rested => {
  const part = id === null ? undefined : site.hardware[id];
  if (part === undefined) return {};
  const { label, takes, spread, from, fits, pin } = part;
  return {
    [called]: label,
    [`${called}, low`]: takes.low,
    [`${called}, planned`]: takes.planned,
    [`${called}, high`]: takes.high,
    [`${called}, spread`]: spread,
    [`${called}, known from`]: from,
    [`${called}, fits posts from`]: fits.post?.low ?? unknown,
    [`${called}, fits posts to`]: fits.post?.high ?? unknown,
    [`${called}, fits frames from`]: fits.frame?.low ?? unknown,
    [`${called}, fits frames to`]: fits.frame?.high ?? unknown,
    [`${called}, face to pin`]: pin ?? unknown,
  };
};

const leafRests = (site: Site, gate: Gate): Rested => {
  const leaves = leavesOf(gate);
  const rests = leaves.map(({ id, widths, height, frame, from, hinge }, n): Rested => ({
    [`${id}, width at the top`]: widths.top,
    [`${id}, width in the middle`]: widths.middle ?? unknown,
    [`${id}, width at the bottom`]: widths.bottom ?? unknown,
    [`${id}, width known from`]: from,
    [`${id}, height`]: height ?? unknown,
    [`${id}, frame OD`]: frame?.od ?? unknown,
    [`${id}, opens to`]: handOf(gate, n, leaves.length),
    ...partRests(site, `${id}, hinge`, hinge),
  }));
  return Object.assign({}, ...rests) as Rested;
};

const wayRests = ({ way }: Gate): Rested => {
  switch (way.kind) {
    case 'swing':
      return { way: way.kind, 'way, opens by': formatAngle(way.turns) };
    case 'centre stop':
      return { way: way.kind, 'way, opens by': formatAngle(way.turns), 'way, stop': way.stop };
    case 'cantilever': {
      const { overlap, counterbalance, rollers, behind } = way;
      return {
        way: way.kind,
        'way, overlap': overlap,
        'way, counterbalance': counterbalance,
        'way, roller posts apart': rollers,
        'way, behind the fence': behind,
      };
    }
    case 'gap':
      return { way: way.kind, 'way, clear': way.clear };
  }
};

/** The two posts by what hangs on them, so that they are the same from either end of the line. */
const postRests = (gate: Gate, laid: GateLayout, layout: Pick<Layout, 'posts'>): Rested => {
  const odOf = (id: PostId | undefined): number | string =>
    (id === undefined ? undefined : layout.posts.get(id)?.od) ?? unknown;
  const [start, end] = [odOf(laid.posts?.start), odOf(laid.posts?.end)];
  const leaves = leavesOf(gate);
  const [first, second] = leaves;
  if (first !== undefined && second !== undefined)
    return { [`${first.id}, post OD`]: start, [`${second.id}, post OD`]: end };
  const [hung, latched] = gate.hingedAt === 'start' ? [start, end] : [end, start];
  return { 'hinge post OD': hung, 'latch post OD': latched };
};

/**
 * Everything that the opening of a gate depends on, by what it is called: the way it closes, every
 * leaf and part with its spread, the posts, and the opening itself. The same whichever end its
 * line is drawn from, and where on the ground it stands. Leaves go by their ids.
 */
export const restsOn = (site: Site, layout: Pick<Layout, 'posts'>, laid: GateLayout): Rested => {
  const gate = site.gates[laid.id];
  if (gate === undefined) return {};
  return {
    'opening to hold': laid.opening.target,
    ...wayRests(gate),
    ...leafRests(site, gate),
    ...partRests(site, 'latch', gate.latch),
    ...partRests(site, 'closer', gate.closer),
    ...postRests(gate, laid, layout),
    'leaf bottom over the ground': gate.bottom ?? unknown,
  };
};
