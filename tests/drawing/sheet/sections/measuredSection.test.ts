import { describe, expect, it } from 'vitest';
import { measuredSection } from '../../../../src/drawing/sheet/sections/measuredSection.ts';
import { layOutSite } from '../../../../src/engine/layOutSite.ts';
import { surveyed } from '../../../../src/engine/survey/surveyed.ts';
import { emptySite } from '../../../../src/site/emptySite.ts';
import { marksObserved } from '../../../../src/site/marksObserved.ts';
import type { Site } from '../../../../src/site/site.ts';
import { sampleYards } from '../../sampleYards.ts';
import { textsOf } from '../../textsOf.ts';

const yardOf = (name: string): Site => {
  const yard = sampleYards.find((one) => one.name === name);
  if (yard === undefined) throw new Error(`expected the sample ${name}`);
  return yard.site;
};

const wordsOf = (drawn: Site): string => {
  const { site } = surveyed(drawn, null);
  return measuredSection(site, layOutSite(site), 7)
    .flatMap(({ head, rows }) => [head, ...rows])
    .flatMap(({ atoms }) => textsOf(atoms).map(({ text }) => text))
    .join(' ');
};

describe('measuredSection', () => {
  it('[D81] a taped yard says how it stands and lists every reading', () => {
    const words = wordsOf(yardOf('taped-yard'));
    expect(words).toContain('Held: 8 readings check it.');
    expect(words).toMatch(/House corner 1 to House corner 2 36'-0 1\/4" 1\/4" off/);
    expect(words).not.toContain('As sketched');
  });

  it('[D81] marks that no reading holds are named as sketched', () => {
    const taped = yardOf('taped-yard');
    const [first] = Object.values(taped.lines).flatMap(({ path }) => Object.values(path));
    if (first === undefined) throw new Error('expected a mark of the fence');
    const observations = Object.fromEntries(
      Object.entries(taped.observations).filter(
        ([, seen]) => !(Object.values(marksObserved(seen)) as string[]).includes(first.mark),
      ),
    );
    expect(wordsOf({ ...taped, observations })).toMatch(
      /1 mark is loose\. As sketched, held by no reading: House corner 1\./,
    );
  });

  it('[D81] fence of which nothing was read is sketched; without fence there is nothing to say', () => {
    expect(wordsOf(yardOf('back-yard'))).toBe(
      'How the plan was measured Sketched: nothing is taped yet.',
    );
    expect(wordsOf(emptySite({ specs: {}, hardware: {} }))).toBe('');
  });
});
