import type { LandUnit } from '../../units/landUnits.ts';
import { inchesIn } from '../../units/parseLandLength.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import type { Calls, CallPart, CallPiece, Understood } from './calls.ts';
import { clauses, type Clause } from './clauses.ts';
import { azimuthOut, type Course } from './course.ts';
import type { Before } from './courseFrom.ts';
import { heard, type Heard, type Hearing } from './heard.ts';
import { joined } from './joined.ts';
import { partsOf, type Told } from './partsOf.ts';
import { phrase } from '../../phrases/phrase.ts';

/** The most that is read at once: a deed of hundreds of calls. Ours, no published source. */
const longest = 100_000;
const mostPieces = 2_000;

const hearingOf = (unit: LandUnit['name']): Hearing => ({
  bare: inchesIn(unit),
  style: { system: unit === 'metres' ? 'm' : 'decimal feet', fraction: 16 },
});

const unfollowed = phrase`tells of a curve that no side follows: expected “thence along said curve” after it`;

/** Pieces with a doubt where the end of a side tells of a curve that the next side does not follow. */
const withUnfollowed = (said: readonly Heard[]): readonly Heard[] =>
  said.map((one, n) => {
    if (one.kind !== 'course' || one.next === null) return one;
    const next = said.slice(n + 1).find(({ kind }) => kind === 'course' || kind === 'fault');
    if (next?.kind === 'course' && next.course.curve !== null) return one;
    return { ...one, doubts: [...one.doubts, unfollowed] };
  });

/** Every clause in its turn, with what the one before it leaves to it. */
const hearAll = (all: readonly Clause[], hearing: Hearing): readonly Heard[] => {
  let before: Before = { out: null, next: null };
  return all.map((clause) => {
    const one = heard(clause, before, hearing);
    if (one.kind === 'course')
      before = { out: azimuthOut({ ...one.course, to: '' }), next: one.next };
    if (one.kind === 'fault') before = { out: null, next: null };
    return one;
  });
};

const toldOf = (one: Heard): readonly Told[] => {
  if (one.kind === 'start') return [{ kind: 'start', word: one.word }];
  return one.kind === 'course' ? [{ kind: 'course', beginning: one.end.beginning }] : [];
};

const after = phrase`comes after the lot has closed: not drawn; another lot is pasted by itself`;

const understood = (one: Heard, part: CallPart): Understood => {
  if (one.kind === 'start') return { kind: 'start', at: one.at };
  if (one.kind !== 'course') return one;
  return { kind: 'course', part, course: { ...one.course, to: one.end.name } };
};

const piecesOf = (all: readonly Clause[], said: readonly Heard[]): readonly CallPiece[] => {
  const parts = [...partsOf(said.flatMap(toldOf))];
  return all.flatMap(({ line, text }, n) => {
    const one = said[n];
    if (one === undefined) return [];
    const part = one.kind === 'course' ? (parts.shift() ?? 'lot') : 'lot';
    const doubts = 'doubts' in one ? one.doubts : [];
    const found = understood(one, part);
    return [{ line, text, found, doubts: part === 'after' ? [after, ...doubts] : doubts }];
  });
};

/** What is at the point of beginning: where the ties come to, or where the calls begin. */
const startOf = (pieces: readonly CallPiece[], ties: readonly Course[]): string => {
  const tied = ties.at(-1)?.to ?? '';
  if (tied !== '') return tied;
  const starts = pieces.flatMap(({ found }) => (found.kind === 'start' ? [found.at] : []));
  return (ties.length > 0 ? starts[1] : starts[0]) ?? '';
};

/**
 * Reads calls that were typed as a list, a line for each, or a deed description that was pasted whole:
 * `thence` by `thence`, with curves, with ties from a point of commencing, in feet, chains, rods or metres.
 * A distance without a unit is in `unit`. Every piece of the text is in the answer, with what it was
 * understood as or why it was not. Refused only where the text is over 100,000 characters or 2,000 pieces.
 */
export const readCalls = (text: string, unit: LandUnit['name'] = 'feet'): Parsed<Calls> => {
  if (text.length > longest) {
    return unread(phrase`the calls have ${text.length} characters: expected at most ${longest}`);
  }
  const hearing = hearingOf(unit);
  const cut = clauses(text);
  if (cut.length > mostPieces) {
    return unread(phrase`the calls have ${cut.length} pieces: expected at most ${mostPieces}`);
  }
  const all = joined(cut, hearing.bare);
  const said = withUnfollowed(hearAll(all, hearing));
  const pieces = piecesOf(all, said);
  const of = (part: CallPart): readonly Course[] =>
    pieces.flatMap(({ found }) =>
      found.kind === 'course' && found.part === part ? [found.course] : [],
    );
  const ties = of('tie');
  const closed = said.flatMap((one) => (one.kind === 'course' ? [one.end.beginning !== 'no'] : []));
  const [tied, courses] = [ties.length, of('lot')];
  const ends = closed[tied + courses.length - 1] === true ? 'at the beginning' : 'untold';
  const area = pieces.find(({ found }) => found.kind === 'area')?.found;
  return read({
    pieces,
    courses,
    ties,
    start: startOf(pieces, ties),
    ends,
    area: area?.kind === 'area' ? area.area : null,
  });
};
