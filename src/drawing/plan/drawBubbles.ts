import type { GateLayout, Layout } from '../../engine/layout.ts';
import type { GateId } from '../../site/ids.ts';
import type { Primitive } from '../primitive.ts';

/** Where the detail of each gate is drawn, by the gate: the number of its sheet. */
export type DetailSheets = ReadonlyMap<GateId, number>;

/** The numbers of the details of gates: from 1, in the order of their openings in the set. */
export const detailNumber = (layout: Pick<Layout, 'gates'>, gate: GateId): number =>
  Object.keys(layout.gates).indexOf(gate) + 1;

/** A bubble at each gate whose detail is in the set. */
export const drawBubbles = (layout: Layout, sheets: DetailSheets): Primitive[] =>
  Object.values<GateLayout>(layout.gates).flatMap(({ id, middle }): Primitive[] => {
    const sheet = sheets.get(id);
    if (sheet === undefined) return [];
    const detail = String(detailNumber(layout, id));
    return [{ kind: 'bubble', at: middle, detail, sheet: String(sheet), to: id }];
  });
