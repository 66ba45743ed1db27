const part = (of255: number, places: number): string =>
  (of255 / 255).toFixed(places).replace(/0+$/, '');

/** A colour such as `#26333a` as the operands of a PDF operator: three parts of 1, or one where it is a grey. */
const operands = (colour: string, places: number): readonly string[] => {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) =>
    Number.parseInt(colour.slice(at, at + 2), 16),
  );
  const parts = red === green && green === blue ? [red] : [red, green, blue];
  return parts.map((of255) => part(of255, places));
};

/** Operators that set a colour: for strokes, for fills and for letters. */
export interface InkColour {
  readonly stroke: string;
  readonly fill: string;
  readonly letters: string;
}

const known = new Map<string, InkColour>();

/** The operators that set a colour such as `#26333a`, each with the end of its line. */
export const inkColour = (colour: string): InkColour => {
  const held = known.get(colour);
  if (held !== undefined) return held;
  const [coarse, fine] = [operands(colour, 2), operands(colour, 3)];
  const grey = coarse.length === 1;
  const made = {
    stroke: `${coarse.join(' ')} ${grey ? 'G' : 'RG'}\n`,
    fill: `${coarse.join(' ')} ${grey ? 'g' : 'rg'}\n`,
    letters: `${fine.join(' ')} ${grey ? 'g' : 'rg'}\n`,
  };
  known.set(colour, made);
  return made;
};
