import { changePin } from '../site/edits/changePin.ts';
import { extendLine } from '../site/edits/extendLine.ts';
import { moveGate } from '../site/edits/moveGate.ts';
import { removeGate } from '../site/edits/removeGate.ts';
import { removeLine } from '../site/edits/removeLine.ts';
import { renameLine } from '../site/edits/renameLine.ts';
import { setHook } from '../site/edits/setHook.ts';
import { startLine } from '../site/edits/startLine.ts';
import { entry } from '../site/entry.ts';
import { gatesOf } from '../site/gatesOf.ts';
import type { LineId, PinId, VertexId } from '../site/ids.ts';
import { keptLegNotes } from '../site/legNotes.ts';
import { nextId } from '../site/nextId.ts';
import { verticesOf } from '../site/pathOrder.ts';
import type { Vertex } from '../site/pathOrder.ts';
import type { Pin } from '../site/pin.ts';
import type { Site } from '../site/site.ts';
import { withEntry } from '../site/withEntries.ts';

interface Taken {
  readonly old: LineId;
  readonly id: LineId;
  /** What the vertices of the old line are called in the new one, and those at which its legs start. */
  readonly leg: ReadonlyMap<VertexId, VertexId>;
  readonly legs: ReadonlySet<VertexId>;
}

/** What was said of the legs of the old line is said of those of the new one. */
const noted = (site: Site, { old, id, leg, legs }: Taken): Site => {
  const notes = keptLegNotes(entry(site, 'lines', old), (each) => legs.has(each));
  const named = <Value>(map: Readonly<Record<VertexId, Value>>): Record<VertexId, Value> =>
    Object.fromEntries(
      Object.entries(map).map(([each, value]) => [leg.get(each as VertexId) ?? each, value]),
    );
  return withEntry(site, 'lines', id, {
    ...entry(site, 'lines', id),
    stepped: named(notes.stepped),
    curved: named(notes.curved),
    walls: named(notes.walls),
  });
};

/** A line of its own through the marks of a chain, built like the one it comes from. */
const lineThrough = (site: Site, old: LineId, chain: readonly Vertex[]): Site => {
  const [first, ...others] = chain;
  if (first === undefined || others.length === 0) return site;
  const { spec, label, hook } = entry(site, 'lines', old);
  const id = nextId(site, 'line');
  const begun = startLine(site, spec, first.mark);
  const drawn = others.reduce((so, { mark }) => extendLine(so, id, mark), begun);
  const fresh = verticesOf(entry(drawn, 'lines', id).path);
  const leg = new Map(chain.map((vertex, n) => [vertex.id, fresh[n]?.id ?? vertex.id]));
  const legs = new Set<VertexId>(chain.slice(0, -1).map((vertex) => vertex.id));
  const hung = gatesOf(drawn, old)
    .filter(([, gate]) => legs.has(gate.leg))
    .reduce(
      (so, [gateId, gate]) =>
        moveGate(so, gateId, gate.anchor, { line: id, leg: leg.get(gate.leg) ?? gate.leg }),
      noted(drawn, { old, id, leg, legs }),
    );
  const pinned = (Object.entries(hung.pins) as [PinId, Pin][])
    .filter(([, pin]) => pin.line === old && legs.has(pin.leg))
    .reduce(
      (so, [pinId, pin]) => changePin(so, pinId, { line: id, leg: leg.get(pin.leg) ?? pin.leg }),
      hung,
    );
  return setHook(renameLine(pinned, id, label), id, hook);
};

/**
 * A site without one leg of a line and without its gates. What is left on either side goes on as
 * a line of its own with its curves and walls, its gates and what is held on it where they are; a closed line opens there. Marks that nothing
 * stands on any more go. RangeError for an unknown line.
 */
export const withoutLeg = (site: Site, id: LineId, leg: VertexId): Site => {
  const line = entry(site, 'lines', id);
  const vertices = verticesOf(line.path);
  const at = vertices.findIndex((vertex) => vertex.id === leg);
  if (at === -1 || (!line.closed && at === vertices.length - 1)) return site;
  const gone = gatesOf(site, id).filter(([, gate]) => gate.leg === leg);
  const bare = gone.reduce((so, [gateId]) => removeGate(so, gateId), site);
  const [head, tail] = [vertices.slice(0, at + 1), vertices.slice(at + 1)];
  const chains = line.closed ? [[...tail, ...head]] : [head, tail];
  const drawn = chains.reduce((so, chain) => lineThrough(so, id, chain), bare);
  return removeLine(drawn, id);
};
