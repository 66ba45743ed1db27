import { phrase } from '../../../phrases/phrase.ts';
import { isMetric } from '../../../units/isMetric.ts';
import { roughText } from '../../../engine/walk/roughText.ts';
import type { WalkEnd, WalkLack, WalkState } from '../../../editor/walk/walk.ts';
import type { LengthStyle } from '../../../units/lengthStyle.ts';
import { inches } from '../../../units/inches.ts';
import type { WalkPlace } from './walkPlace.ts';

/** A position is waited for so long before one line says that there is none, seconds. */
export const patience = 20;

/** Rougher than this is told as such; a mark is kept all the same. 50 ft: ours, no published source. */
export const roughest = inches(600);

const ends: Readonly<Record<WalkEnd, string>> = {
  denied: phrase`Position refused. Allow it for this page in the browser, then try again.`,
  insecure: phrase`This page does not come over https: browsers tell it no position.`,
  none: phrase`This browser tells no position.`,
  unloaded: phrase`The part that lays positions on the drawing did not load. Connect, then try again.`,
};

const lacks: Readonly<Record<WalkLack, string>> = {
  unavailable: phrase`The device has no position now; still asking.`,
  timeout: phrase`No position for ${patience} s; still asking. Step out under open sky.`,
  unreadable: phrase`A position came that cannot be read; still asking.`,
};

const metresInMile = 1609.344;

/** How far away, as one tells it of journeys. */
const farText = (away: number, { system }: LengthStyle): string => {
  if (!Number.isFinite(away)) return phrase`half the earth`;
  const metres = away * 0.0254;
  return isMetric(system)
    ? phrase`${Math.round(metres / 1000)} km`
    : phrase`${Math.round(metres / metresInMile)} miles`;
};

/** What keeps a mark from being dropped where the walk is; null where nothing does. */
const farLine = ({ away }: WalkPlace, style: LengthStyle): string | null =>
  away === null
    ? null
    : phrase`You are ${farText(away, style)} from the place of this drawing: expected within 10 miles.`;

/** How sure a place is that is the average of so many readings; of none where it is the last that came. */
const sureText = (count: number, within: string): string => {
  if (count === 0) return phrase`You are here, within ${within} 19 times in 20.`;
  return count === 1
    ? phrase`Average of 1 reading, within ${within} 19 times in 20.`
    : phrase`Average of ${count} readings, within ${within} 19 times in 20.`;
};

const hereLine = (
  state: Extract<WalkState, { is: 'here' }>,
  place: WalkPlace,
  style: LengthStyle,
): string => {
  const within = roughText(place.radius, style);
  if (state.told === 'moved') return phrase`You have moved: averaging starts again here.`;
  if (state.told !== null) return `${lacks[state.told]} ${phrase`The last was within ${within}.`}`;
  const sure = sureText(state.gathered?.length ?? 0, within);
  const rough = phrase`Rough, over ${roughText(roughest, style)}: wait under open sky.`;
  return place.radius > roughest ? `${sure} ${rough}` : sure;
};

/** The one line that a walk has to say. */
export const walkText = (state: WalkState, place: WalkPlace | null, style: LengthStyle): string => {
  switch (state.is) {
    case 'off':
      return state.why === null ? phrase`Stopped.` : ends[state.why];
    case 'paused':
      return phrase`Paused while the page is hidden.`;
    case 'waiting':
      if (state.lack !== null) return lacks[state.lack];
      return phrase`Waiting for a position. The browser may ask you to allow it.`;
    case 'here':
      if (place === null) return phrase`Laying your position on the drawing.`;
      return farLine(place, style) ?? hereLine(state, place, style);
  }
};
