import { describe, expect, it } from 'vitest';
import { holesSection } from '../../../../src/drawing/sheet/sections/holesSection.ts';
import { measuredSection } from '../../../../src/drawing/sheet/sections/measuredSection.ts';
import { layOutSite } from '../../../../src/engine/layOutSite.ts';
import { surveyed } from '../../../../src/engine/survey/surveyed.ts';
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

  it('[D81] where nothing was read it is said with the holes that the plan is as sketched', () => {
    const words = (drawn: Site): string =>
      holesSection(drawn, layOutSite(drawn), 7)
        .flatMap(({ head }) => textsOf(head.atoms).map(({ text }) => text))
        .join(' ');
    const sketch = yardOf('back-yard');
    expect(wordsOf(sketch)).toBe('');
    expect(words(sketch)).toContain('The plan is as it was sketched: nothing in it was taped.');
    expect(words(yardOf('taped-yard'))).not.toContain('as it was sketched');
  });
});
