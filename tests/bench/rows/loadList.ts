import { newCarry, type Pieces } from '../../../src/engine/carry/carry.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { loadOf } from '../../../src/engine/load/loadOf.ts';
import { setCounting } from '../../../src/site/edits/setCounting.ts';
import { inches } from '../../../src/units/inches.ts';
import { measured } from '../measured.ts';
import type { Figure, Pace, Row } from '../row.ts';
import { yardOf } from '../yardOf.ts';

const posts = 10_000;

const run = ({ quick }: Pace): Figure => {
  const site = yardOf(posts);
  const layout = layOutSite(site);
  let pieces: Pieces | undefined;
  let step = 0;
  const set = () => {
    step += 1;
    return setCounting(site, { postTies: inches(12 + (step % 8)) });
  };
  const goOn = () => {
    const carry = newCarry(pieces);
    const load = loadOf(set(), layout, carry);
    ({ pieces } = carry);
    return load;
  };
  return measured(goOn, () => loadOf(set(), layout), { rounds: quick ? 4 : 12 });
};

/** A load list after a setting was changed by hand. */
export const loadList: Row = {
  work: 'load list of 10,000 posts, one setting changed',
  against: 'the list from nothing',
  bar: 0.2,
  run: (pace) => Promise.resolve(run(pace)),
};
