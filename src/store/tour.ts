/** The steps of the tour, in their order. */
export const tourSteps = [
  'fence',
  'start',
  'length',
  'finish',
  'gate',
  'opening',
  'flag',
  'tape',
  'sheet',
] as const;

export type TourStep = (typeof tourSteps)[number];

/** What a hand looked at, which leaves no trace in the document. */
const tourLooks = ['opening', 'flag', 'sheet'] as const;
export type TourLook = (typeof tourLooks)[number];

/** What of a site and of the hand at work the steps go by. */
export interface TourSeen {
  /** Legs of fence whose length was typed. */
  readonly taped: number;
  readonly gates: number;
  /** At which end the tape of each fence line is hooked, in the order of their ids. */
  readonly hooks: string;
}

/** Where the tour is; `end` after its last step. */
export interface Tour {
  readonly at: TourStep | 'end';
  /** How things stood when the step began. */
  readonly since: TourSeen;
  /** What was looked at since then. */
  readonly looks: readonly TourLook[];
}

const partOf = (value: unknown, key: string): unknown =>
  typeof value === 'object' && value !== null ? Reflect.get(value, key) : undefined;

const isCount = (value: unknown): value is number => Number.isSafeInteger(value);

/** A tour as it was kept on the device; null for anything else. */
export const readTour = (value: unknown): Tour | null => {
  const at = [...tourSteps, 'end' as const].find((step) => step === partOf(value, 'at'));
  const since = partOf(value, 'since');
  const [taped, gates, hooks] = ['taped', 'gates', 'hooks'].map((key) => partOf(since, key));
  const looks = partOf(value, 'looks');
  if (at === undefined || !isCount(taped) || !isCount(gates) || typeof hooks !== 'string')
    return null;
  const told = Array.isArray(looks) ? looks : [];
  return {
    at,
    since: { taped, gates, hooks },
    looks: tourLooks.filter((look) => told.includes(look)),
  };
};

/** A tour whose hand has looked at something; the same one where nothing is new in that. */
export const withLook = (tour: Tour | null, look: TourLook): Tour | null =>
  tour === null || tour.looks.includes(look) ? tour : { ...tour, looks: [...tour.looks, look] };
