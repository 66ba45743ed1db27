import { distance } from '../../geometry/distance.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import type { Site } from '../site.ts';
import type { Clash, ClashKind } from './clash.ts';
import { fieldName } from './fieldName.ts';
import type { PartKind } from './part.ts';
import { hasPart, nameInRow, nameOfId, partName } from './partName.ts';
import { joined, phrase } from '../../phrases/phrase.ts';
import { same } from './same.ts';
import { valueWords } from './valueWords.ts';

/** What one copy has of what is in conflict. */
export interface Told {
  /** Undefined where it has none. */
  readonly value: unknown;
  /** The same in words, lengths as the site writes them. */
  readonly words: string;
}

/** Where two copies of one document disagree: a choice that a person has to make. */
export interface Conflict {
  /** The same in every merge of the same copies, whoever merges them. */
  readonly id: string;
  readonly is: ClashKind;
  readonly kind: PartKind;
  /** The key of the part: its kind, what it is part of, and its id. */
  readonly key: string;
  readonly field: string;
  /** What it is about, such as `Gate Walk gate: name`. */
  readonly what: string;
  readonly mine: Told;
  readonly theirs: Told;
}

/** The copies of a merge, and which of them is the first. */
export interface Named {
  readonly base: Site | null;
  readonly mine: Site;
  readonly theirs: Site;
  readonly firstIs: 'mine' | 'theirs';
}

type Values = Readonly<Record<string, unknown>>;

const placeWords = (site: Site, value: unknown, was: unknown): string => {
  const place = value as SitePoint & { readonly anchor?: unknown; readonly line?: string };
  if (place.anchor !== undefined) {
    const { line, anchor } = place;
    const { from, offset } = anchor as { readonly from: string; readonly offset: number };
    const far = formatLength(inches(offset), site.lengths);
    const name = nameOfId(site, line ?? '');
    if (from === 'start') return phrase`on fence line ${name}, ${far} from the start of its leg`;
    if (from === 'end') return phrase`on fence line ${name}, ${far} from the end of its leg`;
    return phrase`on fence line ${name}, ${far} from the middle of its leg`;
  }
  if (was !== undefined) {
    const far = distance(was as SitePoint, place);
    return phrase`moved by ${formatLength(inches(far), site.lengths)}`;
  }
  const write = (at: number): string => formatLength(inches(at), site.lengths);
  return phrase`${write(place.x)} east, ${write(place.y)} north`;
};

/** What a copy changed of a part that the other one took out. */
const keptWords = (value: unknown, base: unknown): string => {
  const [is, was] = [value, base ?? {}] as Values[];
  const names = Object.keys(is ?? {}).filter(
    (name) => name !== 'order' && !same(is?.[name], was?.[name]),
  );
  if (names.length === 0) return phrase`kept, with changes to what stands on it`;
  return phrase`kept, changed: ${joined(names.map(fieldName), ', ')}`;
};

/** The marks that a row of corners passes, or the numbers of what is in a row. */
const rowWords = (site: Site, key: string, ids: readonly string[]): string => {
  const names = ids.slice(0, 8).map((id) => nameInRow(site, key, id));
  const row = joined(names, ', ');
  return ids.length > 8 ? phrase`${row} …` : row;
};

const toldIn = (site: Site, clash: Clash, value: unknown): Told => {
  const { is, key, field, base } = clash;
  const say = (): string => {
    if (is === 'not together') return phrase`the whole drawing as this copy has it`;
    if (is === 'ordered apart') return rowWords(site, key, value as readonly string[]);
    if (is === 'taken out') return value === undefined ? phrase`taken out` : keptWords(value, base);
    if (field === 'place' && typeof value === 'object') return placeWords(site, value, base);
    return valueWords(site, field, value);
  };
  return { value, words: say() };
};

const whatOf = (clash: Clash, { base, mine, theirs }: Named): string => {
  if (clash.is === 'not together') return phrase`The two copies together: ${String(clash.base)}`;
  const site = [mine, theirs, base].find((one) => one !== null && hasPart(one, clash.key)) ?? mine;
  const name = partName(site, clash.key);
  if (clash.is === 'taken out') return phrase`${name}: taken out or changed`;
  return phrase`${name}: ${fieldName(clash.field)}`;
};

/** A disagreement by who has what, and in words. */
export const conflictOf = (clash: Clash, named: Named): Conflict => {
  const { id, is, kind, key, field, first, second } = clash;
  const [own, other] = named.firstIs === 'mine' ? [first, second] : [second, first];
  return {
    id,
    is,
    kind,
    key,
    field,
    what: whatOf(clash, named),
    mine: toldIn(named.mine, clash, own),
    theirs: toldIn(named.theirs, clash, other),
  };
};
