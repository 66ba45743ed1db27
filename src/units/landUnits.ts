/** A unit in which land is measured. */
export interface LandUnit {
  readonly name:
    | 'miles'
    | 'furlongs'
    | 'varas'
    | 'survey feet'
    | 'yards'
    | 'metres'
    | 'chains'
    | 'rods'
    | 'feet'
    | 'links'
    | 'inches';
  /** How it is written, in small letters, as a regular expression. */
  readonly form: string;
  /** Inches in one. */
  readonly inches: number;
}

/**
 * Units of deeds and plats. A chain is Gunter's: 66 ft, 100 links or 4 rods; a rod, perch or pole is
 * 16 1/2 ft (Civil Engineering Formulas, ch. 7, units of measurement; the engineer's chain of 100 ft is
 * written in feet on a plat). Yards, feet and inches are international, 25.4 mm to the inch; a metre is
 * 1000 / 25.4 in. A mile is 80 chains and a furlong 10. A vara is that of Texas, 33 1/3 in (Texas Natural
 * Resources Code, 21.077; from memory); others were a little shorter, so that it is told.
 *
 * Feet, chains and rods of older surveys were US survey feet of 1200/3937 m, which no survey uses from
 * 2023 on (85 FR 62698). One is longer than an international foot by 2 parts in a million: 1/40 in over
 * 1,000 ft and 1/8 in over a mile. No tape reads that, and the best closure asked for of a boundary is
 * twenty-five times as rough, so both are read as international; feet that say that they are survey
 * feet are read as such.
 */
export const landUnits: readonly LandUnit[] = [
  { name: 'miles', form: String.raw`miles?|mi\b\.?`, inches: 63_360 },
  { name: 'furlongs', form: 'furlongs?', inches: 7_920 },
  { name: 'varas', form: String.raw`varas?|vrs?\b\.?`, inches: 100 / 3 },
  {
    name: 'survey feet',
    form: String.raw`(?:u\.? ?s\.? ?)?survey (?:feet|foot|ft\b\.?)|us ?ft\b|ft ?us\b`,
    inches: 1200 / 3937 / 0.0254,
  },
  { name: 'chains', form: String.raw`chains?|chs?\b\.?`, inches: 792 },
  { name: 'rods', form: String.raw`rods?|rds?\b\.?|perch(?:es)?|poles?|po?\.`, inches: 198 },
  { name: 'metres', form: String.raw`met(?:er|re)s?|m\b\.?`, inches: 1000 / 25.4 },
  { name: 'yards', form: String.raw`yards?|yds?\b\.?`, inches: 36 },
  { name: 'feet', form: String.raw`feet|foot|ft\b\.?|'`, inches: 12 },
  { name: 'links', form: String.raw`links?|lks?\b\.?|lis?\b\.?|l\b\.?`, inches: 7.92 },
  { name: 'inches', form: String.raw`inch(?:es)?|in\.|in\b|"`, inches: 1 },
];
