import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { PlaceLine } from '../../../src/screens/openings/PlaceLine.tsx';
import { GateCard } from '../../../src/screens/yard/cards/GateCard.tsx';
import { removeObservations } from '../../../src/site/edits/removeObservations.ts';
import { setLengths } from '../../../src/site/edits/setLengths.ts';
import type { GateId, ObservationId } from '../../../src/site/ids.ts';
import { openSite } from '../../../src/site/openSite.ts';
import { shown } from '../yard/shown.tsx';

const file = new URL('../../../sample-sites/taped-yard.site.json', import.meta.url);
const opened = openSite(readFileSync(file, 'utf8'));
if (!opened.ok) throw new Error(opened.reason);
const yard = opened.value;
const gate = Object.keys(yard.gates)[0] as GateId;

it('[V21] is one quiet line, on the card of a gate too, in the units of the site', () => {
  const line = /Its place on the ground is known to ±[0-9/ -]+&quot; by the tapes/;
  expect(shown(yard, <PlaceLine gate={gate} />)).toMatch(line);
  expect(shown(yard, <GateCard id={gate} />)).toMatch(line);
  const metric = setLengths(yard, { system: 'm', fraction: 16 });
  expect(shown(metric, <PlaceLine gate={gate} />)).toMatch(/known to ±\d+ mm by the tapes/);
});

it('[V21] is left out where no tapes hold the gate', () => {
  const sketched = removeObservations(yard, Object.keys(yard.observations) as ObservationId[]);
  expect(shown(sketched, <PlaceLine gate={gate} />)).toBe('');
  expect(shown(sketched, <GateCard id={gate} />)).not.toContain('Its place on the ground');
});
