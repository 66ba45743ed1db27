import { markName } from '../../engine/survey/markName.ts';
import type { Ground } from '../../engine/ground/groundOf.ts';
import type { Layout } from '../../engine/layout.ts';
import type { Post } from '../../engine/post.ts';
import { heightOn } from '../../geometry/heightOn.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { sameSpot } from '../../geometry/sameSpot.ts';
import type { MarkId } from '../../site/ids.ts';
import type { Mark } from '../../site/mark.ts';
import type { Site } from '../../site/site.ts';
import { writeCsv } from './writeCsv.ts';
import { phrase } from '../../phrases/phrase.ts';

/** In what units stakes are written, and what is added to their coordinates, inches. */
export interface StakesBy {
  readonly unit: 'feet' | 'metres';
  readonly east: number;
  readonly north: number;
}

interface Stake {
  readonly at: SitePoint;
  readonly code: string;
}

const inchesIn = { feet: 12, metres: 1000 / 25.4 } as const;
const short = { feet: 'ft', metres: 'm' } as const;

const byTag = (a: Post, b: Post): number => a.tag.localeCompare(b.tag, 'en', { numeric: true });

const postStakes = ({ posts }: Layout): Stake[] =>
  [...posts.values()]
    .toSorted(byTag)
    .map(({ at, tag, kind }) => ({ at, code: phrase`post ${tag}, ${kind}` }));

/** Every mark that no post stands on. */
const markStakes = (site: Site, { posts }: Layout): Stake[] => {
  const taken = [...posts.values()].map(({ at }) => at);
  return (Object.entries(site.marks) as [MarkId, Mark][])
    .filter(([, mark]) => !taken.some((at) => sameSpot(at, mark)))
    .map(([id, mark]) => ({ at: mark, code: markName(site, posts, id) }));
};

const heightAt = (ground: Ground | null, at: SitePoint): number | null =>
  ground === null ? null : heightOn(ground.mesh, ground.heights, at);

/**
 * Stakes for a total station as comma-separated text: a header, then point number (from 1), northing,
 * easting, height where the grade shots reach, and what stands there; posts by their tags, then marks
 * without a post. Units stand in the header; four decimals. Coordinates are the site's, x east, y north,
 * and what is added to them. `pointsFromCsv` reads it back.
 */
export const stakesToCsv = (site: Site, layout: Layout, by: StakesBy): string => {
  const each = inchesIn[by.unit];
  const number = (value: number): number => Number((value / each).toFixed(4)) + 0;
  const unit = short[by.unit];
  const header = [
    'Point',
    `Northing (${unit})`,
    `Easting (${unit})`,
    `Height (${unit})`,
    'Description',
  ];
  const stakes = [...postStakes(layout), ...markStakes(site, layout)];
  const rows = stakes.map(({ at, code }, n) => {
    const height = heightAt(layout.ground, at);
    return [
      n + 1,
      number(at.y + by.north),
      number(at.x + by.east),
      height === null ? '' : number(height),
      code,
    ];
  });
  return writeCsv([header, ...rows]);
};
