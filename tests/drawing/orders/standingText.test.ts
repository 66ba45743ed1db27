import { describe, expect, it } from 'vitest';
import { standingText } from '../../../src/drawing/orders/standingText.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { standingsOf } from '../../../src/engine/sign/standingsOf.ts';
import { changeHardware } from '../../../src/site/edits/changeHardware.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { allSigned, walk, yard } from './signedYard.ts';

const textOf = (site: Site): string => {
  const found = standingsOf(site, layOutSite(site)).find(({ id }) => id === walk);
  return found === undefined ? '' : standingText(found, site.lengths);
};

describe('standingText', () => {
  it('[D45] says in one line who signed, or what changed first', () => {
    expect(textOf(yard)).toBe('Not signed off.');
    const signed = allSigned(yard);
    const { check = '' } = signed.gates[walk]?.signed ?? {};
    expect(textOf(signed)).toBe(`Signed off by AB, 2026-11-25, check ${check}.`);
    const takes = { low: inches(1.875), planned: inches(2), high: inches(2) };
    expect(textOf(changeHardware(signed, 'hardware:hinge', { takes }))).toBe(
      'Sign-off by AB, 2026-11-25 is void. Opening to hold: from 4\'-0" to 4\'-0 1/8", 1/8" more. And 2 more.',
    );
  });
});
