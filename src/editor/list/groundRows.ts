import { oneLine } from '../../engine/checks/names.ts';
import type { Layout } from '../../engine/layout.ts';
import { markName } from '../../engine/survey/markName.ts';
import { observationName } from '../../engine/survey/observationName.ts';
import { bearing } from '../../geometry/bearing.ts';
import { distance } from '../../geometry/distance.ts';
import type { Feature } from '../../site/feature.ts';
import { featureName } from '../../site/featureName.ts';
import type { FeatureId, ShotId } from '../../site/ids.ts';
import { legGround } from '../../site/legGround.ts';
import type { Observation } from '../../site/observation.ts';
import { sidesOf } from '../../site/sideAt.ts';
import type { Site } from '../../site/site.ts';
import { formatAzimuth } from '../../units/azimuth.ts';
import { compassName } from '../../units/compassName.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import { entriesOf } from '../entriesOf.ts';
import type { ListRow } from './listRow.ts';
import { placeWords } from './rowWords.ts';
import { joined, phrase, sentenceCase } from '../../phrases/phrase.ts';

/** Of ground with more sides than this only their number is told: its card has them all. */
const mostSides = 8;

const sidesWords = (site: Site, id: FeatureId): string => {
  const sides = sidesOf(site, id);
  const count = sides.length === 1 ? phrase`1 side` : phrase`${sides.length} sides`;
  if (sides.length > mostSides) return count;
  const each = sides.map((side) => {
    const { start, end } = legGround(site, side);
    const long = formatLength(inches(distance(start, end)), site.lengths);
    return phrase`${long} ${compassName(bearing(start, end))}`;
  });
  return joined([count, ...each], ', ');
};

type Utility = Extract<Feature, { readonly kind: 'utility' }>;

const utilityWords: Readonly<Record<Utility['run'], Readonly<Record<Utility['service'], string>>>> =
  {
    buried: {
      electric: phrase`Buried electric line`,
      gas: phrase`Buried gas line`,
      communication: phrase`Buried communication line`,
      water: phrase`Buried water line`,
      reclaimed: phrase`Buried reclaimed line`,
      sewer: phrase`Buried sewer line`,
    },
    overhead: {
      electric: phrase`Overhead electric line`,
      gas: phrase`Overhead gas line`,
      communication: phrase`Overhead communication line`,
      water: phrase`Overhead water line`,
      reclaimed: phrase`Overhead reclaimed line`,
      sewer: phrase`Overhead sewer line`,
    },
  };

const kindWords = (feature: Feature): string =>
  feature.kind === 'utility' ? utilityWords[feature.run][feature.service] : featureName(feature);

const featureRow = (site: Site, id: FeatureId, feature: Feature): ListRow => {
  const name = oneLine(feature.label);
  const said = name === '' ? kindWords(feature) : phrase`${kindWords(feature)} ${name}`;
  const spot = 'mark' in feature ? site.marks[feature.mark] : undefined;
  const place = spot === undefined ? [] : [placeWords(spot, site.lengths)];
  const text =
    feature.kind === 'note' && oneLine(feature.text) !== '' ? [oneLine(feature.text)] : [];
  const trunk =
    feature.kind === 'tree'
      ? [phrase`roots ${formatLength(feature.roots, site.lengths)} round it`]
      : [];
  const sides = 'path' in feature ? [sidesWords(site, id)] : [];
  const first = 'path' in feature ? sidesOf(site, id)[0]?.start : undefined;
  return {
    key: id,
    words: phrase`${said}: ${joined([...text, ...sides, ...place, ...trunk], ', ')}`,
    selection: { kind: 'feature', id },
    at: spot ?? (first === undefined ? null : (site.marks[first] ?? null)),
    rows: [],
  };
};

/** Features of the kinds that are asked for, each with its sides or its place. */
export const featureRows = (site: Site, isAsked: (kind: Feature['kind']) => boolean): ListRow[] =>
  entriesOf(site.features).flatMap(([id, feature]) =>
    isAsked(feature.kind) ? [featureRow(site, id, feature)] : [],
  );

const markWords = (name: string, place: string, fixed: boolean): string =>
  fixed ? phrase`${name}: ${place}, fixed` : phrase`${name}: ${place}`;

/** Every mark by its name and where it is. */
export const markRows = (site: Site, { posts }: Pick<Layout, 'posts'>): ListRow[] =>
  entriesOf(site.marks).map(([id, mark]) => ({
    key: id,
    words: markWords(
      sentenceCase(markName(site, posts, id)),
      placeWords(mark, site.lengths),
      mark.fixed,
    ),
    selection: { kind: 'mark', id },
    at: { x: mark.x, y: mark.y },
    rows: [],
  }));

const figure = (seen: Observation, style: Site['lengths']): string | null => {
  if (seen.kind === 'tape') return formatLength(seen.length, style);
  if (seen.kind === 'offset') return formatLength(inches(Math.abs(seen.distance)), style);
  return seen.kind === 'bearing' ? `${formatAzimuth(seen.bearing)}°` : null;
};

const readingWords = (site: Site, posts: Layout['posts'], seen: Observation): string => {
  const name = observationName(site, posts, seen);
  const said = seen.kind === 'tape' ? phrase`Tape ${name}` : sentenceCase(name);
  const found = figure(seen, site.lengths);
  return found === null ? said : phrase`${said}: ${found}`;
};

/** Every reading by its marks, and what was read. */
export const readingRows = (site: Site, { posts }: Pick<Layout, 'posts'>): ListRow[] =>
  entriesOf(site.observations).map(([id, seen]) => ({
    key: id,
    words: readingWords(site, posts, seen),
    selection: { kind: 'tape', id },
    at: null,
    rows: [],
  }));

const shotName = (id: ShotId, label: string): string =>
  oneLine(label) === '' ? phrase`Shot ${id.slice('shot:'.length)}` : sentenceCase(oneLine(label));

/** Every grade shot with its height over the datum and its place. */
export const shotRows = (site: Site): ListRow[] =>
  entriesOf(site.shots).map(([id, shot]) => {
    const height = formatLength(shot.z, site.lengths);
    return {
      key: id,
      words: phrase`${shotName(id, shot.label)}: height ${height}, ${placeWords(shot, site.lengths)}`,
      selection: { kind: 'shot', id },
      at: { x: shot.x, y: shot.y },
      rows: [],
    };
  });

/** Every picture under the drawing by its name. */
export const pictureRows = (site: Site): ListRow[] =>
  entriesOf(site.underlays).map(([id, { label, file, locked }]) => {
    const name = oneLine(label) || oneLine(file);
    return {
      key: id,
      words: locked ? phrase`Picture ${name}, locked` : phrase`Picture ${name}`,
      selection: { kind: 'underlay', id },
      at: null,
      rows: [],
    };
  });
