import type { Gate } from './gate.ts';
import type { LineId } from './ids.ts';
import type { Pin } from './pin.ts';
import type { Site } from './site.ts';
import { withEntries, withoutEntries } from './withEntries.ts';

/** What stands on a leg of a line: a gate or a pin. */
export type Anchored = Gate | Pin;

/** How both are changed alike: each stays what it is. */
export type AnchoredChange = <Thing extends Anchored>(thing: Thing) => Thing;

const onLine = <Id extends string, Thing extends Anchored>(
  map: Readonly<Record<Id, Thing>>,
  line: LineId,
): [Id, Thing][] =>
  (Object.entries(map) as [Id, Thing][]).filter(([, thing]) => thing.line === line);

/** A site with every gate and pin of a line changed. */
export const withAnchored = (site: Site, line: LineId, change: AnchoredChange): Site => {
  const gates = onLine(site.gates, line).map(([id, gate]) => [id, change(gate)] as const);
  const pins = onLine(site.pins, line).map(([id, pin]) => [id, change(pin)] as const);
  const hung = withEntries(site, 'gates', Object.fromEntries(gates));
  return withEntries(hung, 'pins', Object.fromEntries(pins));
};

/** A site without the gates and pins of a line. */
export const withoutAnchored = (site: Site, line: LineId): Site => {
  const ids = (map: Readonly<Record<string, Anchored>>) => onLine(map, line).map(([id]) => id);
  return withoutEntries(withoutEntries(site, 'gates', ids(site.gates)), 'pins', ids(site.pins));
};
