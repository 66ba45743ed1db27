import { renderToStaticMarkup } from 'react-dom/server';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { layOutSite } from '../../../../src/engine/layOutSite.ts';
import { BenchContext, type Bench } from '../../../../src/screens/bench.ts';
import { SetRecord } from '../../../../src/screens/openings/asSet/SetRecord.tsx';
import type { AsSet } from '../../../../src/site/asSet.ts';
import type { Site } from '../../../../src/site/site.ts';
import { createSiteStore } from '../../../../src/store/siteStore.ts';
import { found, onlyGate } from '../../../engine/set/setYard.ts';
import { firstGate } from '../../../engine/plainYard.ts';
import { cantilever, gap, swing, wayYard } from '../../../engine/wayYard.ts';

const shown = (site: Site, asSet: AsSet | null): string => {
  const id = firstGate(site);
  const drawn = { ...onlyGate(site), asSet };
  const now = { ...site, gates: { [id]: drawn } };
  const gate = layOutSite(now).gates[id];
  if (gate === undefined) throw new Error('no gate');
  const cell = { getState: () => ({ theme: 'day' }), subscribe: () => () => undefined };
  const bench = {
    site: createSiteStore(now, 'Test'),
    session: { ...cell, getInitialState: cell.getState },
    layOut: layOutSite,
  } as unknown as Bench;
  return renderToStaticMarkup(
    <BenchContext value={bench}>
      <SetRecord gate={gate} drawn={drawn} name="Walk gate" />
    </BenchContext>,
  );
};

describe('SetRecord', () => {
  beforeEach(() => {
    vi.stubGlobal('window', { matchMedia: () => ({ matches: false }) });
    vi.stubGlobal('document', { fonts: { check: () => true } });
  });
  afterEach(() => void vi.unstubAllGlobals());

  it('asks for the opening alone, and says what is to be held, before anything was set', () => {
    const html = shown(wayYard(swing), null);
    expect(html).toContain('Opening at the top');
    expect(html).toMatch(/to hold\s*<b>4&#x27;-0&quot;<\/b>/);
    expect(html).not.toContain('Forget what was set');
    expect(html).toMatch(/^<details(?![^>]*open="")/);
  });

  it('stands open where what was set wants attention, else says its verdict folded', () => {
    expect(shown(wayYard(swing), found(47, null))).toMatch(/^<details[^>]*open=""/);
    const holds = shown(wayYard(swing), found(48, null));
    expect(holds).toMatch(/^<details(?![^>]*open="")/);
    expect(holds).toMatch(/<summary>.*Holds.*<\/summary>/);
  });

  it('lists what helps and names the post to be set again by its tag', () => {
    const html = shown(wayYard(swing), found(47, null));
    expect(html).toMatch(/What helps.*Enough:.*Set the latch post again.*On the sheet: post C\./);
  });

  it('asks for hinges of leaves that turn, not of those that roll; of a gap for no leaf at all', () => {
    expect(shown(wayYard(swing), found(48, null))).toContain('Leaf: hinges take');
    expect(shown(wayYard(cantilever), found(48, null))).not.toContain('hinges take');
    const open = shown(wayYard(gap), found(61, null));
    expect(open).toContain('Wider than wanted by 1&quot;');
    expect(open).not.toContain('measured again');
    expect(open).not.toContain('What helps');
  });
});
