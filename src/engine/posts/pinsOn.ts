import { alongOf } from '../../site/anchor.ts';
import type { PinId } from '../../site/ids.ts';
import type { Pin } from '../../site/pin.ts';
import type { Site } from '../../site/site.ts';
import { legOn, type Course } from './course.ts';
import type { HeldPost } from './runPosts.ts';
import type { Closed } from './spaceOut.ts';

/** What was asked by hand of the places along a course; stations in inches from its start. */
export interface CoursePins {
  /** Where line posts are to stand, in the order of the course. */
  readonly posts: readonly HeldPost[];
  /** Ground that is kept clear of every part of a hole. */
  readonly clear: readonly Closed[];
}

/** The pins of a site by the line that they are on. */
export const pinsByLine = ({ pins }: Pick<Site, 'pins'>): ReadonlyMap<string, [PinId, Pin][]> => {
  const lines = new Map<string, [PinId, Pin][]>();
  for (const entry of Object.entries(pins) as [PinId, Pin][]) {
    const { line } = entry[1];
    lines.set(line, [...(lines.get(line) ?? []), entry]);
  }
  return lines;
};

/** The pins of a course's line that are on its legs. */
export const pinsOn = (course: Course, pins: readonly (readonly [PinId, Pin])[]): CoursePins => {
  const stood = pins.flatMap(([id, pin]) => {
    const own = legOn(course, pin.leg);
    if (own === null) return [];
    return [{ id, pin, station: own.from + alongOf(pin.anchor, own.leg.length) }];
  });
  return {
    posts: stood
      .flatMap(({ id, pin, station }) =>
        pin.holds.kind === 'post'
          ? [{ id: `post:${id}` as const, station, kind: 'line' as const }]
          : [],
      )
      .toSorted((a, b) => a.station - b.station || (a.id < b.id ? -1 : 1)),
    clear: stood.flatMap(({ pin, station }) =>
      pin.holds.kind === 'clear'
        ? [{ from: station - pin.holds.reach, to: station + pin.holds.reach }]
        : [],
    ),
  };
};
