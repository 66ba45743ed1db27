import { inches } from '../units/inches.ts';
import type { FenceLine } from './fenceLine.ts';
import type { VertexId } from './ids.ts';
import { legsOf } from './legsOf.ts';

/** What is said of single legs of a line, by the vertices at which they start. */
export type LegNotes = Pick<FenceLine, 'stepped' | 'curved' | 'walls'>;

type Notes<Value> = Readonly<Record<VertexId, Value>>;

const entriesOf = <Value>(notes: Notes<Value>) => Object.entries(notes) as [VertexId, Value][];

/** The notes of the legs that are kept. */
export const keptLegNotes = (line: LegNotes, keep: (leg: VertexId) => boolean): LegNotes => {
  const kept = <Value>(notes: Notes<Value>): Notes<Value> =>
    Object.fromEntries(entriesOf(notes).filter(([leg]) => keep(leg)));
  return { stepped: kept(line.stepped), curved: kept(line.curved), walls: kept(line.walls) };
};

/** The notes of a line that runs the other way: what bowed to the left bows to the right, what rose falls. */
export const turnedLegNotes = (line: FenceLine): LegNotes => {
  const next = new Map(legsOf(line).map((leg) => [leg.id, leg.next]));
  const turned = <Value>(notes: Notes<Value>, turn: (value: Value) => Value): Notes<Value> =>
    Object.fromEntries(
      entriesOf(notes).flatMap(([leg, value]) => {
        const start = next.get(leg);
        return start === undefined ? [] : [[start, turn(value)] as const];
      }),
    );
  return {
    stepped: turned(line.stepped, (value) => value),
    curved: turned(line.curved, (off) => inches(-off)),
    walls: turned(line.walls, (wall) => ({ ...wall, rise: inches(0 - wall.rise) })),
  };
};
