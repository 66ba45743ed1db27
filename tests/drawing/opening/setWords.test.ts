import { expect, it } from 'vitest';
import { setWords } from '../../../src/drawing/opening/setWords.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import type { AsSet } from '../../../src/site/asSet.ts';
import type { Site } from '../../../src/site/site.ts';
import { firstGate } from '../../engine/plainYard.ts';
import { found, onlyGate } from '../../engine/set/setYard.ts';
import { gap, swing, wayYard } from '../../engine/wayYard.ts';

const said = (site: Site, asSet: AsSet | null) => {
  const gate = layOutSite(site).gates[firstGate(site)];
  if (gate === undefined) throw new Error('no gate');
  return setWords(site, { ...onlyGate(site), asSet }, gate.opening);
};

it('[D60] says nothing of posts that were not set', () => {
  expect(said(wayYard(swing), null)).toBeNull();
  expect(said(wayYard(gap), null)).toBeNull();
});

it('[D60] gives a gate a verdict, and a gap a comparison with what was wanted', () => {
  expect(said(wayYard(swing), found(48, null))?.words).toBe('Holds');
  expect(said(wayYard(gap), found(61, null))?.words).toBe('Wider than wanted by 1"');
});
