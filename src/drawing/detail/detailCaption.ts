import type { Site } from '../../site/site.ts';
import type { Scale } from '../sheet/scales.ts';
import type { GateSight } from './gateSight.ts';
import { sideSeen } from './sideSeen.ts';
import { phrase } from '../../phrases/phrase.ts';

const seenFrom = {
  outside: phrase`Seen from outside`,
  inside: phrase`Seen from inside`,
} as const;

const waysOf = ({ gate, leaves, slides }: GateSight): string => {
  if (leaves.length > 0)
    return gate.opens === 'left' ? phrase`, opens away from you` : phrase`, opens towards you`;
  if (slides.length === 0) return '';
  return gate.opens === 'left'
    ? phrase`, rolls behind the fence`
    : phrase`, rolls before the fence`;
};

const underText = ({ leaves, slides }: GateSight): string => {
  if (slides.length > 0) return phrase`Under it the plan, broken lines where it is rolled aside.`;
  return leaves.length > 0
    ? phrase`Under it the plan, broken lines where it is open.`
    : phrase`Under it the plan.`;
};

const groundOf = ({ ground, pair }: GateSight): string => {
  if (pair.some(({ post }) => post.wall !== null))
    return phrase` Posts on a wall: its top is drawn level.`;
  return ground.known === 'level' ? phrase` Ground drawn level.` : '';
};

/**
 * What a detail shows and from where: from inside or outside where the fence closes round something, else by
 * which post is on the left; its scale; and what is drawn as nobody has told of it.
 */
export const detailCaption = (sight: GateSight, site: Site, { text }: Scale): string => {
  const [start, end] = sight.pair;
  const side = sideSeen(site, sight.laid.line);
  const where = side === null ? phrase`Seen` : seenFrom[side];
  const left = phrase`${start.post.tag} on the left, ${end.post.tag} on the right`;
  const under = underText(sight);
  return `${where}, ${left}${waysOf(sight)}; ${text}. ${under}${groundOf(sight)}`;
};
