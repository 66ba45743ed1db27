import type { LineId, MarkId } from '../../site/ids.ts';
import type { Site } from '../../site/site.ts';
import type { Flag } from '../flag.ts';
import type { Chain, Doubled } from '../posts/chain.ts';
import type { LaidLines } from '../posts/layLines.ts';
import { lineName } from './names.ts';
import { phrase } from '../../phrases/phrase.ts';

/** The marks that were drawn on one spot, and the fence lines that pass them. */
interface Use {
  readonly at: Flag['at'];
  readonly marks: Set<MarkId>;
  readonly lines: Set<LineId>;
}

/** Whether a line was drawn to a mark of its own on a spot that another one stands for. */
const isDoubled = ({ stops, doubled }: Chain): boolean =>
  doubled.length > 0 || stops.some(({ mark, drawn }) => mark !== drawn);

const usesOf = (chains: readonly Chain[]): Map<MarkId, Use> => {
  const uses = new Map<MarkId, Use>();
  for (const chain of chains) {
    for (const { mark, drawn, at } of [...chain.stops, ...chain.doubled]) {
      const use = uses.get(mark) ?? { at, marks: new Set(), lines: new Set() };
      use.marks.add(drawn);
      use.lines.add(chain.id);
      uses.set(mark, use);
    }
  }
  return uses;
};

const told = ({ marks, lines }: Use, site: Site): string => {
  const [one, other] = [...lines].toSorted();
  const name = one === undefined ? '' : lineName(site, one);
  if (other !== undefined) {
    return phrase`${name} and ${lineName(site, other)} have marks of their own on one spot: expected one that they share; they count as one.`;
  }
  const count = marks.size === 2 ? phrase`two` : `${marks.size}`;
  return phrase`${name} has ${count} marks on one spot: expected them apart; they count as one.`;
};

const again = (chain: Chain, { mark, at }: Doubled, site: Site): Flag => ({
  level: 'settle',
  rule: 'one mark twice in a row',
  place: { kind: 'mark', id: mark },
  at,
  message: phrase`${lineName(site, chain.id)} passes one mark twice in a row: expected a leg between; the second is left out.`,
});

/** One line for every spot on which fence lines have more marks than one, or one mark twice in a row. */
export const checkSpots = (site: Site, { chains }: LaidLines): Flag[] => [
  // where every mark stands for itself no spot has two
  ...[...(chains.some(isDoubled) ? usesOf(chains) : [])].flatMap(([id, use]): Flag[] => {
    if (use.marks.size < 2) return [];
    const place = { kind: 'mark', id } as const;
    const message = told(use, site);
    return [{ level: 'settle', rule: 'two marks on one spot', place, at: use.at, message }];
  }),
  ...chains.flatMap((chain) =>
    chain.doubled.flatMap((stop) => (stop.again ? [again(chain, stop, site)] : [])),
  ),
];
