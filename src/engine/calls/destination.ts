/** Where a course ends, as its call tells it. */
export interface Destination {
  /** Such as `iron pin`; empty where nothing is told, or only that the point of beginning is there. */
  readonly name: string;
  /** Whether it is the point of beginning, and whether the deed calls that the true one. */
  readonly beginning: 'no' | 'beginning' | 'true beginning';
}

const longest = 60;
const beginning =
  /((?:true|real|actual) )?(?:(?:point|place)(?: (?:and|or) place)? of (?:beginning|commencement|commencing)|(?<=(?<![a-z])to (?:the )?)beginning(?! of)|(?<![a-z])p\.?o\.?b\.?(?![a-z]))/i;
const towards = /(?<![a-z])to (?:an? |the |said )?((?:[^;,.(]|\.(?=\d)){2,})/i;
/** What is no name of a place: a point, a hand, or what the course runs by. */
const unnamed =
  /^(?:point|beginning)$|^(?:right|left)(?![a-z])|^(?:the )?(?:beginning|point|start) (?:of|on) |(?<![a-z])(?:curve|course)(?![a-z])/i;
/** What leads from the name of a place over to what the place is. */
const leads = /,? (?:and|at|being|for|said|which)(?![a-z]).*$/i;

/** A name as a label takes it: at most 60 characters, no blanks or stops at its ends. */
export const nameOf = (text: string): string => {
  const line = text.replace(/\s+/g, ' ').trim();
  if (line.length <= longest) return line;
  return line.slice(0, longest).replace(/\s+\S*$/, '');
};

const placeName = (tail: string): string => {
  const name = towards.exec(tail)?.[1] ?? '';
  const alone = beginning.test(name) ? name.replace(leads, '') : name;
  return beginning.test(alone) || unnamed.test(alone) ? '' : nameOf(alone);
};

/** What the end of a call, after its figures, says of the place that the course comes to. */
export const destination = (tail: string): Destination => {
  const found = beginning.exec(tail);
  const name = placeName(tail);
  if (found === null) return { name, beginning: 'no' };
  return { name, beginning: found[1] === undefined ? 'beginning' : 'true beginning' };
};
