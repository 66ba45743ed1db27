/** Before a length that is the size of something: `a 20' alley`. */
const sized = /(?<![a-z])(?:an?|said|that|this|existing) $/;
/** Words that lead on to another part of a call, and are no word of a thing. */
const onward =
  'to|along|at|on|by|in|from|off|of|for|more|with|and|or|thence|is|being|passing|said|the|an?|north|south|east|west';
const things =
  'alley|street|road|lane|drive|avenue|highway|driveway|easement|right[- ]of[- ]way|r/?w(?![a-z])|p\\.?u\\.?e|' +
  'fence|wall|hedge|strip|walk|sidewalk|path|trail|setback|buffer|ditch|drain|creek|canal|pipe|sewer|tree|gate';
/** After one: what it is the size of. */
const sizeOf = new RegExp(
  `^[ -]*(?:wide|in width|in height|high|tall|deep)(?![a-z])|^[ -](?:(?!(?:${onward})(?![a-z]))[a-z]+[ -]){0,4}(?:${things})`,
);

/** Whether a length of a call in small letters is of a thing that stands or runs along its course. */
export const isThingSize = (
  text: string,
  { at, end }: { readonly at: number; readonly end: number },
): boolean => sized.test(text.slice(0, at)) || sizeOf.test(text.slice(end));
