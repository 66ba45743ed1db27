import { newCarry, type Carry } from '../../engine/carry/carry.ts';
import type { Layout } from '../../engine/layout.ts';
import type { Site } from '../../site/site.ts';
import type { Primitive } from '../primitive.ts';
import { drawFixes } from './drawFixes.ts';
import { drawNamelessMarks } from './drawLoneMarks.ts';
import { drawSurvey } from './drawSurvey.ts';
import type { Bundle, Group } from '../group.ts';
import { planGroups, type PlanOptions } from './drawPlan.ts';
import { kept } from './kept.ts';
import { standing } from './standing.ts';

/**
 * A name that finds no room near its place waits until the pad is brought closer; flags and the
 * names of gates are led out to clear ground, so that none of them is overlooked.
 */
const nearOnly = (primitive: Primitive): Primitive =>
  primitive.kind !== 'text' || primitive.ink === 'gate' || primitive.ink === 'stop'
    ? primitive
    : { ...primitive, far: 'leave out' };

const nearGroups = new WeakMap<Group, Group>();

/** A group as the pad shows it; the very same for the same group. */
const nearGroup = (group: Group): Group => {
  const known = nearGroups.get(group);
  if (known !== undefined) return known;
  const near = group.map(nearOnly);
  nearGroups.set(group, near);
  return near;
};

const nearBundles = new WeakMap<Bundle, Bundle>();

/** The same of a bundle, without groups that hold nothing. */
const nearBundle = (bundle: Bundle): Bundle => {
  const known = nearBundles.get(bundle);
  if (known !== undefined) return known;
  const near = bundle.filter(({ length }) => length > 0).map(nearGroup);
  nearBundles.set(bundle, near);
  return near;
};

/** What it follows from what is drawn of a survey. */
const surveyed = (site: Site, { survey }: Layout): readonly unknown[] => {
  const { suspects, loose, ways, stands } = survey;
  return [...standing(site), site.lengths, suspects, loose, ways, stands];
};

/**
 * The plan as the pad shows it, where a person can come closer: as `planGroups`, less crowded, with marks
 * that have no name and how rough places are that satellites found. Groups without anything are left away.
 */
export const padGroups = (
  site: Site,
  layout: Layout,
  carry: Carry,
  options: PlanOptions = {},
): readonly Group[] => {
  const things = carry.shelf<Group>('pad');
  const drawn = (id: string, from: readonly unknown[], draw: () => Group): Bundle => [
    things.next(id, from, (before) => kept(before, draw())),
  ];
  const bundles = [
    drawn('fixes', [site.observations], () => drawFixes(site)),
    ...planGroups(site, layout, options, carry).flatMap((part) => part.bundles),
    drawn('nameless', standing(site), () => drawNamelessMarks(site)),
    drawn('survey', surveyed(site, layout), () => drawSurvey(site, layout)),
  ];
  // one by one: of thousands of groups flatMap takes ten times as long
  const all: Group[] = [];
  for (const bundle of bundles) for (const group of nearBundle(bundle)) all.push(group);
  return all;
};

/** The plan of a pad as primitives: see `padGroups`. */
export const padPlan = (
  site: Site,
  layout: Layout,
  options: PlanOptions = {},
): readonly Primitive[] => padGroups(site, layout, newCarry(), options).flat();
