import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { standingsOf } from '../../../src/engine/sign/standingsOf.ts';
import { BenchContext, type Bench } from '../../../src/screens/bench.ts';
import { SignOff } from '../../../src/screens/openings/SignOff.tsx';
import { StandingLine } from '../../../src/screens/openings/StandingLine.tsx';
import { moveGate } from '../../../src/site/edits/moveGate.ts';
import { setGateOpens } from '../../../src/site/edits/setGateOpens.ts';
import type { Site } from '../../../src/site/site.ts';
import { createSiteStore } from '../../../src/store/siteStore.ts';
import { inches } from '../../../src/units/inches.ts';
import { allSigned, walk, yard } from '../../drawing/orders/signedYard.ts';

const shown = (site: Site, what: 'card' | 'line'): string => {
  const store = createSiteStore(site, 'Test');
  const bench = { site: store, layOut: layOutSite } as unknown as Bench;
  const standing = standingsOf(site, layOutSite(site)).find(({ id }) => id === walk);
  if (standing === undefined) throw new Error('the gate is not laid out');
  const signer = { by: 'AB', on: '2026-11-25' };
  return renderToStaticMarkup(
    <BenchContext value={bench}>
      {what === 'card' ? (
        <SignOff gate={standing} signer={signer} onSigner={() => undefined} />
      ) : (
        <StandingLine gate={walk} />
      )}
    </BenchContext>,
  );
};

describe('SignOff', () => {
  it('offers to sign what is unsigned, again what is void, and to take back either', () => {
    const signed = allSigned(yard);
    expect(shown(yard, 'card')).toMatch(/>Sign off<(?!.*Take back)/);
    expect(shown(signed, 'card')).toMatch(/^(?!.*>Sign (off|again)<).*Take back/);
    expect(shown(setGateOpens(signed, walk, 'right'), 'card')).toMatch(
      /Leaf, opens to: from left to right\..*Sign again.*Take back/,
    );
  });

  it('refuses with one line while a stop of the gate stands', () => {
    const over = moveGate(yard, walk, { from: 'start', offset: inches(-300) });
    const { message = '' } = layOutSite(over).flags.find(({ level }) => level === 'stop') ?? {};
    const card = shown(over, 'card');
    expect(card).toContain('Cannot be signed off while a stop stands');
    expect(message).not.toBe('');
    expect(card).toMatch(/<button[^>]*disabled=""[^>]*>Sign off/);
  });
});

describe('StandingLine', () => {
  it('says how a gate stands and leads to where it is signed', () => {
    expect(shown(yard, 'line')).toMatch(/Not signed off\..*href="#openings"/);
    expect(shown(allSigned(yard), 'line')).toContain('Signed off by AB');
  });
});
