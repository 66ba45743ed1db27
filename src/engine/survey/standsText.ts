import { markName } from './markName.ts';
import type { Survey } from './survey.ts';
import { checkedFrom } from './checkingTape.ts';
import { mostMarks } from './surveyOf.ts';
import type { Layout } from '../layout.ts';
import type { Site } from '../../site/site.ts';
import { phrase } from '../../phrases/phrase.ts';

const unchecked = (readings: Survey['readings']): string => {
  const all = Object.values(readings);
  const alone = all.filter(({ redundancy }) => redundancy < checkedFrom).length;
  if (alone === all.length)
    return phrase`Held, by not one reading more than it takes: nothing checks them`;
  return alone === 1
    ? phrase`Held; 1 reading is checked by no other`
    : phrase`Held; ${alone} readings are checked by no other`;
};

const disagreeing = ({ suspects, more }: Survey): string => {
  const some =
    suspects.length === 1
      ? phrase`One reading disagrees`
      : phrase`${suspects.length} readings disagree`;
  return phrase`${some} with the rest${more ? phrase`, and others besides` : ''}`;
};

/** How the yard stands by what was taped, in one line. */
export const standsText = (survey: Survey): string => {
  const { stands, loose, spare, readings, settled } = survey;
  if (!settled)
    return phrase`The readings do not bring the marks to rest: draw them nearer to their place`;
  const marks =
    loose.length === 1 ? phrase`1 mark is loose` : phrase`${loose.length} marks are loose`;
  switch (stands) {
    case 'sketched':
      return phrase`Sketched: nothing is taped yet`;
    case 'large':
      return phrase`Too many marks to say what holds them: expected at most ${mostMarks}`;
    case 'disagrees':
      return disagreeing(survey);
    case 'loose':
      return marks;
    case 'unchecked':
      return unchecked(readings);
    case 'held':
      return spare === 1
        ? phrase`Held: 1 reading checks it`
        : phrase`Held: ${spare} readings check it`;
  }
};

/** The tape that would help most, in words; null where none would. */
export const helpsText = (site: Site, { posts, survey }: Layout): string | null => {
  if (survey.helps === null) return null;
  const { from, to } = survey.helps;
  return phrase`${markName(site, posts, from)} to ${markName(site, posts, to)}`;
};
