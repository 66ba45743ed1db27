import { inches, type Inches } from './inches.ts';
import { landUnits, type LandUnit } from './landUnits.ts';

/** A length somewhere in a text: where it begins and ends, and how long it is. */
export interface LandLength {
  readonly at: number;
  readonly end: number;
  readonly length: Inches;
}

interface Part extends LandLength {
  readonly unit: LandUnit;
}

const units = landUnits.map(({ form }, n) => `(?<u${n}>${form})`).join('|');
const number = String.raw`\d{1,3}(?:,\d{3})+(?:\.\d+)?|\d+(?:\.\d+)?|\.\d+`;
const partForm = new RegExp(
  `(?<![a-z\\d.,/]|no\\. ?|# ?)(?:(${number})(?:[ -](\\d+)/(\\d+))?|(\\d+)/(\\d+))(?:\\) ?|[- ])?(?:${units})(?![a-z])`,
  'g',
);
/** What may stand between `4 chains` and `25 links`. */
const joint = /^(?:[ ,-]*|,? ?(?:and|&) )$/;

const sizeOf = (found: RegExpExecArray): number => {
  const [, whole = '0', top, bottom, above, below] = found;
  const fraction = top !== undefined ? Number(top) / Number(bottom) : 0;
  if (above !== undefined) return Number(above) / Number(below);
  return Number(whole.replaceAll(',', '')) + fraction;
};

const partOf = (found: RegExpExecArray): Part | null => {
  const unit = landUnits.find((_, n) => found.groups?.[`u${n}`] !== undefined);
  const at = found.index;
  const length = inches(sizeOf(found) * (unit?.inches ?? NaN));
  // a fraction over 0 is no length
  if (unit === undefined || !Number.isFinite(length)) return null;
  return { at, end: at + found[0].length, length, unit };
};

/** `34 l`: links behind chains, and nothing elsewhere. */
const isLetter = ({ at, end }: Part, text: string): boolean =>
  /\d ?l\.?$/.test(text.slice(at, end));

const isJoined = (before: Part, part: Part, text: string): boolean =>
  part.unit.inches < before.unit.inches &&
  joint.test(text.slice(before.end, part.at)) &&
  (before.unit.name === 'chains' || !isLetter(part, text));

/**
 * The lengths with a unit in a text of small letters, in the order in which they stand: feet with or
 * without inches, chains and links, rods, yards, metres, each smaller unit added to the larger before
 * it. Inches alone are no length of land but the size of a pin, and are left out.
 */
export const landLengths = (text: string): LandLength[] => {
  const whole: Part[] = [];
  for (const found of text.matchAll(partForm)) {
    const part = partOf(found);
    const before = whole.at(-1);
    if (part === null) continue;
    if (before !== undefined && isJoined(before, part, text)) {
      const length = inches(before.length + part.length);
      whole.splice(-1, 1, { ...part, at: before.at, length });
    } else if (part.unit.name !== 'inches' && !isLetter(part, text)) whole.push(part);
  }
  return whole.map(({ at, end, length }) => ({ at, end, length }));
};
