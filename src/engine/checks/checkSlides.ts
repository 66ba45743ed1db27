import { bearing } from '../../geometry/bearing.ts';
import { distance } from '../../geometry/distance.ts';
import { slack } from '../../geometry/tolerance.ts';
import type { Gate } from '../../site/gate.ts';
import type { GateWay } from '../../site/gateWay.ts';
import type { Site } from '../../site/site.ts';
import {
  counterbalanceFor,
  leastCounterbalance,
  overhangFor,
  overhangSource,
  widestSlide,
} from '../../trade/slides.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import { radians } from '../../units/radians.ts';
import type { Flag } from '../flag.ts';
import type { GateLayout, LeafLayout, Run, SlideLayout } from '../layout.ts';
import type { LaidLines } from '../posts/layLines.ts';
import type { LaidYard } from './laidYard.ts';
import { aroundGate, meetings, type Surroundings } from '../sweep/meetings.ts';
import { plantedAt, type GateFlag } from './gateFlag.ts';
import { metName } from './metName.ts';
import { gateName } from './names.ts';
import { phrase } from '../../phrases/phrase.ts';

type Slide = Extract<GateWay, { kind: 'cantilever' }>;

interface Rolled {
  readonly site: Site;
  readonly laid: LaidLines;
  readonly layout: GateLayout;
  readonly gate: Gate;
  readonly way: Slide;
}

const writer =
  (site: Site) =>
  (length: number): string =>
    formatLength(inches(length), fineStyle(site.lengths));

const closesNothing = ({ site, layout }: Rolled): GateFlag[] => {
  if (layout.opening.target > 0) return [];
  const message = phrase`${gateName(site, layout.id)}: its leaves are ${writer(site)(-layout.opening.target)} shorter than their overlap and counterbalance: expected longer leaves; it has no opening.`;
  return [{ level: 'stop', rule: 'leaf closes nothing', message }];
};

const counterbalanced = ({ site, layout, way }: Rolled): GateFlag[] => {
  const count = Math.max(1, layout.slides.length);
  const write = writer(site);
  const name = gateName(site, layout.id);
  const closes = inches(layout.opening.target / count);
  const least = counterbalanceFor(closes);
  const flags: GateFlag[] = [];
  if (way.counterbalance < least - slack) {
    const table = overhangFor(closes);
    const other = table === null ? '' : phrase`; ${write(table)} (${overhangSource.text})`;
    const message = phrase`${name}: counterbalance ${write(way.counterbalance)}: expected at least ${write(least)} (${leastCounterbalance.source.text})${other}.`;
    flags.push({ level: 'settle', rule: 'counterbalance too short', message });
  }
  if (closes > widestSlide.each + slack) {
    const message = phrase`${name}: one leaf closes ${write(closes)}: expected at most ${write(widestSlide.each)} (${widestSlide.source.text}).`;
    flags.push({ level: 'settle', rule: 'leaf longer than leaves that roll', message });
  }
  const tail = way.overlap + way.counterbalance;
  if (way.rollers > tail + slack) {
    const message = phrase`${name}: closed, its leaf ends ${write(way.rollers - tail)} short of the second roller post: expected roller posts at most ${write(tail)} apart.`;
    flags.push({ level: 'stop', rule: 'leaf off its rollers', message });
  }
  return flags;
};

const runOf = ({ laid, layout }: Rolled): Run | undefined =>
  laid.lines[layout.line]?.runs.find(({ spaces }) =>
    spaces.some((space) => space.kind === 'gate' && space.gate === layout.id),
  );

/** Where along a run a leaf stands when it is rolled aside, and how the run ends on that side. */
const alongRun = ({ laid, layout }: Rolled, slide: SlideLayout, run: Run) => {
  const back = Math.cos(bearing(slide.stored.end, slide.stored.start) - layout.bearing) < 0;
  const id = back ? layout.posts?.start : layout.posts?.end;
  const stop = run.posts.find(({ post }) => post === id);
  const od = laid.posts.get(id ?? 'post:')?.od ?? 0;
  const face = (stop?.station ?? 0) + (back ? od / 2 : -od / 2);
  const far = back ? face - slide.width : face + slide.width;
  const last = run.posts.at(back ? 0 : -1)?.post ?? 'post:';
  return { low: Math.min(face, far), high: Math.max(face, far), last: laid.posts.get(last) };
};

/** A leaf wants its whole length along the fence: not past a corner, not over another opening. */
const storedAlong = (rolled: Rolled, slide: SlideLayout): GateFlag[] => {
  const { site, layout } = rolled;
  const run = runOf(rolled);
  if (run === undefined) return [];
  const write = writer(site);
  const { low, high, last } = alongRun(rolled, slide, run);
  const missing = Math.max(0 - low, high - run.length);
  const at = slide.stored.start;
  const says = phrase`${gateName(site, layout.id)}: rolled aside, its leaf takes ${write(slide.width)} along the fence`;
  const flags: GateFlag[] = [];
  // past the last post of a fence there is nothing of the fence in the way
  if (missing > slack && last?.kind !== 'end') {
    const message = phrase`${says} and reaches ${write(missing)} past post ${last?.tag ?? ''} where the fence turns or ends: expected a straight stretch as long as the leaf.`;
    flags.push({ level: 'stop', rule: 'no room to roll', message, at });
  }
  run.spaces.forEach((space, n) => {
    if (space.kind !== 'gate' || space.gate === layout.id) return;
    const [from, to] = [run.posts[n]?.station ?? 0, run.posts[n + 1]?.station ?? 0];
    if (to <= low + slack || from >= high - slack) return;
    const message = phrase`${says} and stands over the opening of ${gateName(site, space.gate)}: expected it clear.`;
    flags.push({ level: 'stop', rule: 'leaf stored over an opening', message, at });
  });
  return flags;
};

/** The strip that a leaf rolls over, as a leaf that does not turn. */
const stripOf = ({ id, thickness, stored, closed }: SlideLayout): LeafLayout => ({
  id,
  width: inches(distance(stored.start, closed.end)),
  hinge: stored.start,
  pin: 'said',
  hung: inches(0),
  thickness,
  closed: bearing(stored.start, closed.end),
  turns: radians(0),
  open: bearing(stored.start, closed.end),
});

const inTheWay = ({ site, layout }: Rolled, around: Surroundings): GateFlag[] =>
  meetings(layout.slides.map(stripOf), aroundGate(around, layout))
    .filter(({ met }) => met.kind !== 'paving' && met.kind !== 'pool')
    .filter(({ met }) => met.kind !== 'gate' || layout.id < met.id)
    .map(({ met, at }): GateFlag => {
      if (met.kind === 'gate') {
        const message = phrase`${gateName(site, layout.id)}: its leaf rolls over the ground of ${metName(site, met)}: open one at a time, or let it roll the other way.`;
        return { level: 'caution', rule: 'leaves meet', message, at };
      }
      const message = phrase`${gateName(site, layout.id)}: its leaf rolls into ${metName(site, met)}: expected room for the whole leaf beside the opening.`;
      const level = met.kind === 'boundary' ? 'caution' : 'stop';
      return { level, rule: 'no room to roll', message, at };
    });

/**
 * What there is to say about leaves that roll: counterbalance, length, rollers, and whether there
 * is room for the whole leaf along the fence on the side it rolls to.
 */
export const checkSlides = (site: Site, laid: LaidYard): Flag[] => {
  const rolled = Object.values(laid.gates).flatMap((layout): Rolled[] => {
    const gate = site.gates[layout.id];
    if (gate?.way.kind !== 'cantilever') return [];
    return [{ site, laid, layout, gate, way: gate.way }];
  });
  if (rolled.length === 0) return [];
  const around = laid.around();
  return rolled.flatMap((one) => {
    const { layout } = one;
    if (layout.opening.target <= 0) return plantedAt(layout, closesNothing(one));
    const along = layout.placed ? layout.slides.flatMap((slide) => storedAlong(one, slide)) : [];
    const met = layout.placed ? inTheWay(one, around) : [];
    return plantedAt(layout, [...counterbalanced(one), ...along, ...met]);
  });
};
