import type { Site } from '../../site/site.ts';
import type { Scale } from '../sheet/scales.ts';
import type { GateSight } from './gateSight.ts';
import { sideSeen } from './sideSeen.ts';

const waysOf = ({ gate, leaves, slides }: GateSight): string => {
  const to = gate.opens === 'left' ? 'away from' : 'towards';
  if (leaves.length > 0) return `, opens ${to} you`;
  if (slides.length === 0) return '';
  return gate.opens === 'left' ? ', rolls behind the fence' : ', rolls before the fence';
};

const groundOf = ({ ground, pair }: GateSight): string => {
  if (pair.some(({ post }) => post.wall !== null))
    return ' Posts on a wall: its top is drawn level.';
  return ground.known === 'level' ? ' Ground drawn level.' : '';
};

/**
 * What a detail shows and from where: from inside or outside where the fence closes round something, else by
 * which post is on the left; its scale; and what is drawn as nobody has told of it.
 */
export const detailCaption = (sight: GateSight, site: Site, { text }: Scale): string => {
  const [start, end] = sight.pair;
  const side = sideSeen(site, sight.laid.line);
  const where = side === null ? 'Seen' : `Seen from ${side}`;
  const left = `${start.post.tag} on the left, ${end.post.tag} on the right`;
  const moves = sight.leaves.length + sight.slides.length > 0;
  const open = moves
    ? `, broken lines where it is ${sight.slides.length > 0 ? 'rolled aside' : 'open'}`
    : '';
  return `${where}, ${left}${waysOf(sight)}; ${text}. Under it the plan${open}.${groundOf(sight)}`;
};
