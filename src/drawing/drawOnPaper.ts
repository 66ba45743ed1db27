import type { Bounds } from '../geometry/bounds.ts';
import type { OrientedBox } from '../geometry/orientedBox.ts';
import type { Atom } from './atom.ts';
import { atomsInSight } from './atomsInSight.ts';
import { avoidMark } from './explode/avoidMark.ts';
import { breaksFor, brokenAt, type Breaks } from './explode/brokenAt.ts';
import { markAtoms } from './explode/markAtoms.ts';
import { letterer } from './lettering/letterer.ts';
import type { Lead, Lettered } from './lettering/lettered.ts';
import { makeLettering } from './lettering/lettering.ts';
import { textBox } from './lettering/textBox.ts';
import { weightOf } from './lettering/weight.ts';
import type { LayerName } from './layerNames.ts';
import type { Primitive } from './primitive.ts';
import type { Projection } from './projection.ts';
import type { Layer } from './layer.ts';
import { standsNear } from './standsNear.ts';

/**
 * Where letters may go: inside `window` (paper inches), off the boxes that are `taken`. Of that a
 * part may be `shown`: the name of what is in it had better be in it too.
 */
export interface Room {
  readonly window?: Bounds;
  readonly taken?: readonly OrientedBox<'paper'>[];
  readonly shown?: Bounds;
  /** Thin lines of the yard, hatching and match lines are broken where letters lie on them; they run on unless said. */
  readonly thin?: 'broken';
  /** The drawing is cut off at these edges, paper inches: what lies wholly outside is left out. None unless said. */
  readonly clip?: Bounds;
}

/** Whether what a primitive draws can be broken for letters: what is thin, and where parts of a plan meet. */
const canBreak = (primitive: Primitive): boolean => {
  if (primitive.kind === 'area') return true;
  if (primitive.kind === 'polyline' || primitive.kind === 'arc')
    return weightOf(primitive.pen) === 'thin' || primitive.pen === 'match line';
  return primitive.kind === 'circle' && primitive.pen === 'tree';
};

/** A drawing on paper, and the texts for which there was no room at all. */
export interface Drawn {
  readonly atoms: readonly Atom[];
  readonly left: readonly string[];
}

/** A drawing on paper in layers, the texts without room, and the letters that lead elsewhere. */
export interface DrawnLayers {
  readonly layers: readonly Layer[];
  readonly left: readonly string[];
  readonly leads: readonly Lead[];
}

/** A text stands this near its own dimension line, which is not broken for it; paper inches. */
const besideLine = 0.008;

/** Atoms without those that are cut off. */
type InSight = (atoms: readonly Atom[]) => readonly Atom[];

/** What was lettered of each layer: all leaders and lines of dimensions, then all letters. */
const letteringOf = (
  lettered: readonly { readonly name: LayerName; readonly found: readonly Lettered[] }[],
  { breaks, inSight }: { readonly breaks: Breaks; readonly inSight: InSight },
): Layer[] => [
  ...lettered.map(({ name, found }) => ({
    name,
    atoms: brokenAt(inSight(found.flatMap(({ lines }) => lines)), breaks),
  })),
  ...lettered.map(({ name, found }) => ({ name, atoms: found.flatMap(({ texts }) => texts) })),
];

/** Primitives of one layer. */
export interface DrawnLayer {
  readonly name: LayerName;
  readonly primitives: readonly Primitive[];
}

/** Letters of primitives, each at the place of its own; null for what has none. */
const letteredOf = (
  primitives: readonly Primitive[],
  letter: (primitive: Primitive) => Lettered | null,
): readonly (Lettered | null)[] => {
  const letters: (Lettered | null)[] = primitives.map(() => null);
  // dimensions have their place; names and numbers can go elsewhere: the last of each is lettered first
  for (const chains of [true, false])
    for (let n = primitives.length - 1; n >= 0; n -= 1) {
      const primitive = primitives[n];
      if (primitive !== undefined && (primitive.kind === 'dimension chain') === chains)
        letters[n] = letter(primitive);
    }
  return letters;
};

/** Where in all primitives those of each layer are: from one place up to another. */
const spansOf = (layers: readonly DrawnLayer[]) => {
  let to = 0;
  return layers.map(({ name, primitives }) => {
    const from = to;
    to += primitives.length;
    return { name, from, to };
  });
};

/**
 * Puts primitives on paper at a scale, layer by layer: what is drawn of each from the ground up, then
 * leaders and lines of dimensions, then letters. Dimensions are lettered first, then what lies on top: a
 * later primitive has the better claim to room. No two texts overlap; those that find no room are named in `left`, so
 * that a sheet can say where else they are written. Lines are not cut off at the window, nor at a `clip`: that only
 * leaves out what is nowhere in it, and changes no letter.
 */
export const layersOnPaper = (
  layers: readonly DrawnLayer[],
  projection: Projection,
  { window, taken = [], shown, thin, clip }: Room = {},
): DrawnLayers => {
  const edge = window ?? null;
  const primitives = layers.flatMap((layer) => layer.primitives);
  const room = makeLettering(edge, taken, { shown: shown ?? null, thin: thin ?? 'whole' });
  const near = primitives.map(standsNear(clip, projection));
  // a flag takes room from lines of chains that leave the window, wherever it is
  primitives.forEach((primitive, n) => {
    if (near[n] || primitive.kind === 'flag') avoidMark(room, primitive, projection, edge);
  });
  const letters = letteredOf(primitives, letterer(primitives, projection, room));
  const parts = spansOf(layers);
  const lettered = parts.map(({ name, from, to }) => ({
    name,
    found: letters.slice(from, to).flatMap((own) => own ?? []),
  }));
  const all = lettered.flatMap((layer) => layer.found);
  const boxes = thin === 'broken' ? all.flatMap(({ texts }) => texts.map(textBox)) : [];
  const breaks = breaksFor(boxes);
  const inSight: InSight = (atoms) => (clip === undefined ? atoms : atomsInSight(atoms, clip));
  const drawn = parts.map(({ name, from, to }) => ({
    name,
    atoms: primitives.slice(from, to).flatMap((primitive, n) => {
      if (!near[from + n]) return [];
      const atoms = inSight(markAtoms(primitive, projection, edge));
      return canBreak(primitive) ? brokenAt(atoms, breaks) : atoms;
    }),
  }));
  const written = letteringOf(lettered, { breaks: breaksFor(boxes, besideLine), inSight });
  return {
    layers: [...drawn, ...written].filter(({ atoms }) => atoms.length > 0),
    left: all.flatMap(({ left }) => left),
    leads: all.flatMap(({ leads = [] }) => leads),
  };
};

/** Primitives on paper as one drawing without layers: see `layersOnPaper`. */
export const drawOnPaper = (
  primitives: readonly Primitive[],
  projection: Projection,
  room: Room = {},
): Drawn => {
  const { layers, left } = layersOnPaper([{ name: 'sheet', primitives }], projection, room);
  return { atoms: layers.flatMap(({ atoms }) => atoms), left };
};
