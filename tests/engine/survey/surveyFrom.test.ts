import fc from 'fast-check';
import { expect, it } from 'vitest';
import { layOutFrom, type Laying } from '../../../src/engine/layOutFrom.ts';
import { surveyed, type Surveyed } from '../../../src/engine/survey/surveyed.ts';
import { addObservation } from '../../../src/site/edits/addObservation.ts';
import { fixMarks, freeMarks } from '../../../src/site/edits/fixMarks.ts';
import { moveMark } from '../../../src/site/edits/moveMark.ts';
import { removeObservations } from '../../../src/site/edits/removeObservations.ts';
import { setTape } from '../../../src/site/edits/setTape.ts';
import type { MarkId, ObservationId } from '../../../src/site/ids.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { gridSite } from './gridSite.ts';

const anyEdit = fc.record({
  does: fc.constantFrom('tape', 'move', 'find', 'hold', 'untape', 'go back'),
  pick: fc.nat(50),
  other: fc.nat(50),
  by: fc.double({ min: -30, max: 30, noNaN: true }),
});

type Edit = typeof anyEdit extends fc.Arbitrary<infer One> ? One : never;

const edited = (site: Site, { does, pick, other, by }: Edit): Site => {
  const marks = Object.keys(site.marks) as MarkId[];
  const readings = Object.keys(site.observations) as ObservationId[];
  const [mark, far] = [marks[pick % marks.length]!, marks[other % marks.length]!];
  const { x, y, fixed } = site.marks[mark]!;
  switch (does) {
    case 'tape':
      return mark === far ? site : setTape(site, mark, far, inches(240 + by));
    case 'move':
      return moveMark(site, mark, { x: x + by, y });
    case 'find':
      return addObservation(site, {
        kind: 'fix',
        mark,
        x: x + by,
        y,
        accuracy: inches(200),
        label: '',
      });
    case 'hold':
      return fixed ? freeMarks(site, [mark]) : fixMarks(site, [mark]);
    default:
      return readings.length === 0
        ? site
        : removeObservations(site, [readings[pick % readings.length]!]);
  }
};

it('[V23] a survey from the one before is the same as from nothing, along any edits and back', () => {
  const size = fc.record({
    marks: fc.integer({ min: 2, max: 12 }),
    tapes: fc.integer({ min: 1, max: 24 }),
  });
  fc.assert(
    fc.property(size, fc.array(anyEdit, { maxLength: 8 }), (yard, edits) => {
      const sites = [gridSite(yard)];
      let [known, laying]: [Surveyed | null, Laying | null] = [null, null];
      for (const edit of [null, ...edits]) {
        const last = sites.at(-1)!;
        if (edit?.does === 'go back') sites.push(sites[edit.pick % sites.length]!);
        else if (edit !== null) sites.push(edited(last, edit));
        const site = sites.at(-1)!;
        known = surveyed(site, known);
        laying = layOutFrom(known.site, laying);
        const fresh = surveyed(site, null);
        expect(known.site).toEqual(fresh.site);
        expect(laying.layout.survey).toEqual(layOutFrom(fresh.site, null).layout.survey);
      }
    }),
    { numRuns: 40 },
  );
});
