import { bearing } from '../../geometry/bearing.ts';
import { distance } from '../../geometry/distance.ts';
import { midpoint } from '../../geometry/midpoint.ts';
import type { Atom, Text } from '../atom.ts';
import { breaksFor, brokenAt } from '../explode/brokenAt.ts';
import { textBox } from '../lettering/textBox.ts';
import { labelAt } from '../lettering/label.ts';
import { makeLettering, type Lettering } from '../lettering/lettering.ts';
import type { DetailLabel } from './detailLabel.ts';
import type { DetailPart } from './detailPart.ts';
import { outlinePieces } from '../explode/outlinePieces.ts';

/** Kept clear to either side of every line, paper inches. */
const beside = 0.02;

const avoidStrokes = (room: Lettering, atoms: readonly Atom[]): void => {
  for (const atom of atoms) {
    if (atom.do !== 'stroke') continue;
    for (const [from, to] of outlinePieces(atom.outline)) {
      const halfWidth = distance(from, to) / 2 + beside;
      const angle = bearing(from, to);
      room.avoid({ centre: midpoint(from, to), halfWidth, halfHeight: beside, angle });
    }
  }
};

const letterOne = ({ look, places }: DetailLabel, room: Lettering): Text[] | null => {
  for (const { at, angle } of places) {
    const label = labelAt(look, at, angle);
    const covered = room.covers(label.box);
    if (covered.thin + covered.heavy > 0 || !room.isFree(label.box)) continue;
    room.take(label.box);
    return [...label.texts];
  }
  return null;
};

/**
 * Everything drawn of a part, and its texts at the first of their places that is clear of every line and every
 * other text. `left` names those that have to be told and found no place.
 */
export const letterDetail = ({
  atoms,
  labels,
}: DetailPart): { readonly atoms: readonly Atom[]; readonly left: readonly string[] } => {
  const room = makeLettering(null, []);
  avoidStrokes(room, atoms);
  const left: string[] = [];
  const texts = labels.flatMap((label) => {
    const placed = letterOne(label, room);
    if (placed === null && label.need === 'must') left.push(label.look.text.replaceAll('\n', ', '));
    return placed ?? [];
  });
  const breaks = breaksFor(texts.map(textBox));
  // what lies under a text, such as fabric, is broken there
  return { atoms: [...brokenAt(atoms, breaks), ...texts], left };
};
