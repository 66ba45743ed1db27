/** What a figure of a curve may be. */
export type CurveLabel = 'radial' | 'radius' | 'delta' | 'arc' | 'chord' | 'tangent' | 'degree';

/** A word in a call that says what the figure after it is. */
export interface LabelWord {
  readonly label: CurveLabel;
  readonly at: number;
  readonly end: number;
}

/** Letters that stand before an equals sign or a colon in the table of a plat. */
const sign = (letters: string): string => `(?<![a-z])(?:${letters})\\.?(?= ?[=:])`;

/** In the order in which they are tried at one place of a text in small letters. */
const words: Readonly<Record<CurveLabel, string>> = {
  degree: 'degree of curv(?:e|ature)',
  radial: String.raw`radial(?:ly)?(?: line| bearing)?|radius point|(?<![a-z])cent(?:er|re)\b(?! ?(?:line|angle))`,
  radius: `radius|radii|${sign('r|rad')}`,
  delta: `central angle|included angle|(?<![a-z])delta(?: angle)?|δ|${sign('ca')}`,
  arc: `(?<![a-z])arc(?: length| distance)?\\b(?! definition)|curve length|length of (?:the |said )?curve|${sign('l|al')}`,
  chord: `(?:long )?chord(?! definition)|${sign('c|cb|ch|cd|lc|chb|chd')}`,
  tangent: `tangent (?:length|distance)|tangent(?= (?:(?:of|is|being) )?\\d)|tangent(?= (?:bears|bearing))|${sign('t|tan')}|(?<![a-z])t(?= \\d)`,
};

const anyWord = new RegExp(
  Object.entries(words)
    .map(([label, form]) => `(?<${label}>${form})`)
    .join('|'),
  'g',
);

const isLabel = (label: string): label is CurveLabel => label in words;

/** The words of a call in small letters that say what the figures of its curve are, in their order. */
export const curveLabels = (text: string): readonly LabelWord[] =>
  [...text.matchAll(anyWord)].flatMap((found) => {
    const label = Object.keys(words).find((name) => found.groups?.[name] !== undefined);
    if (label === undefined || !isLabel(label)) return [];
    return [{ label, at: found.index, end: found.index + found[0].length }];
  });
