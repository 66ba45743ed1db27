import { tourSteps, type Tour, type TourSeen } from '../../../store/tour.ts';
import { stepDone } from './stepDone.ts';
import type { TourNow } from './tourNow.ts';

const nothingYet = { looks: [] } as const;

/** The tour at its first step. */
export const begun = (since: TourSeen): Tour => ({ at: tourSteps[0], since, ...nothingYet });

/** The step after the one that it is at, which begins with how things stand now. */
export const after = (tour: Tour, since: TourSeen): Tour => {
  if (tour.at === 'end') return tour;
  const next = tourSteps[tourSteps.indexOf(tour.at) + 1] ?? 'end';
  return { at: next, since, ...nothingYet };
};

/** The step before, to be done once more; the first one has none. */
export const before = (tour: Tour, since: TourSeen): Tour => {
  const place = tour.at === 'end' ? tourSteps.length : tourSteps.indexOf(tour.at);
  return { at: tourSteps[Math.max(0, place - 1)] ?? tourSteps[0], since, ...nothingYet };
};

/** A tour brought on to the first step that was not done yet; the same one where that is where it is. */
export const broughtOn = (tour: Tour, now: TourNow): Tour => {
  if (tour.at === 'end' || !stepDone(tour.at, now, tour)) return tour;
  return broughtOn(after(tour, now.seen), now);
};
