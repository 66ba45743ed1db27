import { boundsOf } from '../../geometry/bounds.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { Feature } from '../../site/feature.ts';
import type { FeatureId } from '../../site/ids.ts';
import { oneLine } from '../checks/names.ts';
import { phrase, sentenceCase } from '../../phrases/phrase.ts';
import { featureWords } from '../../site/featureWords.ts';

/** A thing on the ground that has corners or a middle. */
export interface Outline {
  readonly id: FeatureId;
  readonly label: string;
  readonly kind: Feature['kind'];
  readonly points: readonly SitePoint[];
}

const westOf = ({ points }: Outline): number => boundsOf(points)?.minX ?? 0;

/**
 * What things on the ground are called: by their labels, else by their kinds; where several would
 * have one name they are numbered from the west.
 */
export const featureNames = (things: readonly Outline[]): ReadonlyMap<FeatureId, string> => {
  const plain = ({ label, kind }: Outline): string =>
    oneLine(label) || sentenceCase(featureWords[kind]);
  const names = things.map(plain);
  return new Map(
    things.map((thing, n) => {
      const name = names[n] ?? '';
      const alike = things.filter((_, m) => names[m] === name);
      const group = alike.toSorted((a, b) => westOf(a) - westOf(b));
      const number = group.indexOf(thing) + 1;
      return [
        thing.id,
        group.length === 1 ? name : phrase`${name} ${number} from the west`,
      ] as const;
    }),
  );
};
