import { parseAzimuth } from './azimuth.ts';
import { compassWord } from './compassWord.ts';
import { read, type Parsed } from './parsed.ts';
import { radians, type Radians } from './radians.ts';

/** The eight winds, as a number of eighths of a turn counter-clockwise from east. */
const winds = new Map(
  Array.from({ length: 8 }, (_, n) => {
    const angle = radians((n * Math.PI) / 4);
    return [compassWord(angle).replace('-', ''), angle] as const;
  }),
);

/**
 * Reads a direction as an angle counter-clockwise from east: one of the eight winds by its name or its
 * letters (`north`, `north-east`, `NE`), or degrees clockwise from north as `parseAzimuth` reads them.
 */
export const parseWay = (text: string): Parsed<Radians> => {
  const word = text.toLowerCase().replace(/[\s-]/g, '');
  for (const [wind, angle] of winds) {
    const letters = wind.replace(/^(north|south)(east|west)$/, (_, a: string, b: string) =>
      [a[0], b[0]].join(''),
    );
    if (word === wind || word === letters || (letters === wind && word === wind[0])) {
      return read(angle);
    }
  }
  return parseAzimuth(text);
};
