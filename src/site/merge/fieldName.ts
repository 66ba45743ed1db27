/** Fields whose name in the file is not what people call them. */
const words: Readonly<Record<string, string>> = {
  label: 'name',
  od: 'OD',
  spec: 'fence build',
  maxBay: 'longest bay',
  hook: 'end the tape is hooked to',
  guards: 'what it is a barrier round',
  follows: 'boundary that it follows',
  curved: 'curve',
  wall: 'wall under it',
  stepped: 'stepped fabric',
  closes: 'way to close and leaves',
  way: 'way to close',
  opens: 'side it opens to',
  hingedAt: 'hinged end',
  bottom: 'bottom over the ground',
  nominal: 'size it is called by',
  post: 'gate posts',
  signed: 'sign-off',
  asSet: 'posts as set',
  route: 'what has to pass',
  powered: 'motor',
  sizes: 'sizes',
  fits: 'what it fits',
  asks: 'what it asks',
  lies: 'how it lies',
  shows: 'how much shows',
  accepted: 'acceptance',
  bytes: 'picture',
  written: 'how they are written',
  read: 'reading',
  z: 'height',
  at: 'where it is',
  order: 'order',
  whole: 'all of it',
  holds: 'what it holds',
  wire: 'wire diameter',
  solid: 'solid share',
};

/** What people call a field of a part, such as `fabric height`. */
export const fieldName = (field: string): string => {
  if (Object.hasOwn(words, field)) return words[field] ?? field;
  return field.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
};
