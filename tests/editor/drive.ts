import { unsurveyed } from '../../src/engine/survey/survey.ts';
import type { Input } from '../../src/editor/input.ts';
import type { Answer, Desk, Tool } from '../../src/editor/tool.ts';
import type { Layout } from '../../src/engine/layout.ts';
import type { Site } from '../../src/site/site.ts';
import type { Selection } from '../../src/store/selection.ts';
import { inches } from '../../src/units/inches.ts';
import { fromDegrees } from '../../src/units/radians.ts';
import { samplePlans } from '../store/samplePlans.ts';

/** A layout with nothing in it, for tools that do not look at one. */
export const emptyLayout: Layout = {
  lines: {},
  posts: new Map(),
  gates: {},
  ground: null,
  survey: unsurveyed,
  flags: [],
};

/** A desk for a site, with nothing selected unless said otherwise. */
export const deskFor = (site: Site, change: Partial<Desk> = {}): Desk => ({
  site,
  layout: emptyLayout,
  selection: null,
  plans: samplePlans,
  ...change,
});

/** Where a tool has come to after some inputs. */
export interface Driven<State> {
  readonly state: State;
  readonly site: Site;
  readonly draft: Site | null;
  readonly selection: Selection;
  readonly say: string;
  /** Labels of what was committed, oldest first. */
  readonly labels: readonly string[];
}

const after = <State>(driven: Driven<State>, answer: Answer<State>): Driven<State> => ({
  state: answer.state,
  site: answer.commit?.site ?? driven.site,
  draft: answer.commit ? null : answer.draft === undefined ? driven.draft : answer.draft,
  selection: answer.select === undefined ? driven.selection : answer.select,
  say: answer.say ?? '',
  labels: answer.commit ? [...driven.labels, answer.commit.label] : driven.labels,
});

/** A tool, idle, over a site. */
export const driven = <State>(tool: Tool<State>, site: Site): Driven<State> => ({
  state: tool.idle,
  site,
  draft: null,
  selection: null,
  say: '',
  labels: [],
});

/** Drives a tool on by inputs, each against the site that the one before left. */
export const drive = <State>(
  tool: Tool<State>,
  from: Driven<State>,
  inputs: readonly Input[],
  layOut: (site: Site) => Layout = () => emptyLayout,
): Driven<State> =>
  inputs.reduce((so, input) => {
    const desk = deskFor(so.site, { selection: so.selection, layout: layOut(so.site) });
    return after(so, tool.on(so.state, input, desk));
  }, from);

const point =
  (what: 'press' | 'move' | 'release') =>
  (x: number, y: number): Input => ({
    do: what,
    at: { x, y },
    reach: inches(6),
    free: false,
  });

export const press = point('press');
export const move = point('move');
export const release = point('release');

/** Typed: a length in inches and a bearing in degrees from east; null for what was not. */
export const typed = (length: number | null, degrees: number | null = null): Input => ({
  do: 'type',
  length: length === null ? null : inches(length),
  bearing: degrees === null ? null : fromDegrees(degrees),
});
