const onward = String.raw`due |north|south|east|west|[nsew][. \d]|along|by |on |with |a curve`;

/**
 * The word that a call of a deed begins with, in small letters, as a regular expression: `thence`, or
 * `then` and `th` where a way to go follows.
 */
export const thence = `(?<![a-z0-9])(?:thence(?![a-z])|then(?= (?:${onward}))|th\\.?(?= (?:${onward})))`;
