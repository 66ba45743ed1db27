import { oneLine } from '../../engine/checks/names.ts';
import type { Layout } from '../../engine/layout.ts';
import { markName } from '../../engine/survey/markName.ts';
import { observationName } from '../../engine/survey/observationName.ts';
import { bearing } from '../../geometry/bearing.ts';
import { distance } from '../../geometry/distance.ts';
import type { Feature } from '../../site/feature.ts';
import { featureName } from '../../site/featureName.ts';
import type { FeatureId } from '../../site/ids.ts';
import { legGround } from '../../site/legGround.ts';
import type { Observation } from '../../site/observation.ts';
import { sidesOf } from '../../site/sideAt.ts';
import type { Site } from '../../site/site.ts';
import { formatAzimuth } from '../../units/azimuth.ts';
import { compassWord } from '../../units/compassWord.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import { entriesOf } from '../entriesOf.ts';
import type { ListRow } from './listRow.ts';
import { capital, many, placeWords } from './rowWords.ts';

/** Of ground with more sides than this only their number is told: its card has them all. */
const mostSides = 8;

const sidesWords = (site: Site, id: FeatureId): string => {
  const sides = sidesOf(site, id);
  const count = many(sides.length, 'side');
  if (sides.length > mostSides) return count;
  const each = sides.map((side) => {
    const { start, end } = legGround(site, side);
    const long = formatLength(inches(distance(start, end)), site.lengths);
    return `${long} ${compassWord(bearing(start, end))}`;
  });
  return `${count}, ${each.join(', ')}`;
};

const kindWords = (feature: Feature): string => {
  const name = featureName(feature);
  return feature.kind === 'utility' ? capital(`${feature.run} ${feature.service} line`) : name;
};

const featureRow = (site: Site, id: FeatureId, feature: Feature): ListRow => {
  const name = oneLine(feature.label);
  const said = `${kindWords(feature)}${name === '' ? '' : ` ${name}`}`;
  const spot = 'mark' in feature ? site.marks[feature.mark] : undefined;
  const place = spot === undefined ? [] : [placeWords(spot, site.lengths)];
  const text =
    feature.kind === 'note' && oneLine(feature.text) !== '' ? [oneLine(feature.text)] : [];
  const trunk =
    feature.kind === 'tree' ? [`roots ${formatLength(feature.roots, site.lengths)} round it`] : [];
  const sides = 'path' in feature ? [sidesWords(site, id)] : [];
  const first = 'path' in feature ? sidesOf(site, id)[0]?.start : undefined;
  return {
    key: id,
    words: `${said}: ${[...text, ...sides, ...place, ...trunk].join(', ')}`,
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

/** Every mark by its name and where it is. */
export const markRows = (site: Site, { posts }: Pick<Layout, 'posts'>): ListRow[] =>
  entriesOf(site.marks).map(([id, mark]) => ({
    key: id,
    words: `${capital(markName(site, posts, id))}: ${placeWords(mark, site.lengths)}${mark.fixed ? ', fixed' : ''}`,
    selection: { kind: 'mark', id },
    at: { x: mark.x, y: mark.y },
    rows: [],
  }));

const figure = (seen: Observation, style: Site['lengths']): string => {
  if (seen.kind === 'tape') return `: ${formatLength(seen.length, style)}`;
  if (seen.kind === 'offset') return `: ${formatLength(inches(Math.abs(seen.distance)), style)}`;
  return seen.kind === 'bearing' ? `: ${formatAzimuth(seen.bearing)}°` : '';
};

/** Every reading by its marks, and what was read. */
export const readingRows = (site: Site, { posts }: Pick<Layout, 'posts'>): ListRow[] =>
  entriesOf(site.observations).map(([id, seen]) => {
    const name = observationName(site, posts, seen);
    const noun = seen.kind === 'tape' ? 'Tape ' : '';
    const words = `${capital(`${noun}${name}`)}${figure(seen, site.lengths)}`;
    return { key: id, words, selection: { kind: 'tape', id }, at: null, rows: [] };
  });

/** Every grade shot with its height over the datum and its place. */
export const shotRows = (site: Site): ListRow[] =>
  entriesOf(site.shots).map(([id, shot]) => {
    const name = oneLine(shot.label) === '' ? id.replace(':', ' ') : oneLine(shot.label);
    const height = formatLength(shot.z, site.lengths);
    return {
      key: id,
      words: `${capital(name)}: height ${height}, ${placeWords(shot, site.lengths)}`,
      selection: { kind: 'shot', id },
      at: { x: shot.x, y: shot.y },
      rows: [],
    };
  });

/** Every picture under the drawing by its name. */
export const pictureRows = (site: Site): ListRow[] =>
  entriesOf(site.underlays).map(([id, { label, file, locked }]) => ({
    key: id,
    words: `Picture ${oneLine(label) || oneLine(file)}${locked ? ', locked' : ''}`,
    selection: { kind: 'underlay', id },
    at: null,
    rows: [],
  }));
