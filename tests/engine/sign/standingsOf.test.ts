import { describe, expect, it } from 'vitest';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { standingsOf } from '../../../src/engine/sign/standingsOf.ts';
import { moveGate } from '../../../src/site/edits/moveGate.ts';
import { setGateOpens } from '../../../src/site/edits/setGateOpens.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { allSigned, drive, walk, yard } from '../../drawing/orders/signedYard.ts';

const needsOf = (site: Site) =>
  Object.fromEntries(standingsOf(site, layOutSite(site)).map(({ id, need }) => [id, need]));

describe('standingsOf', () => {
  it('[O9] says of every gate how it stands', () => {
    expect(needsOf(yard)).toEqual({ [drive]: 'unsigned', [walk]: 'unsigned' });
    const signed = allSigned(yard);
    expect(needsOf(signed)).toEqual({ [drive]: 'signed', [walk]: 'signed' });
    expect(needsOf(setGateOpens(signed, walk, 'right'))).toEqual({
      [drive]: 'signed',
      [walk]: 'void',
    });
  });

  it('[O9] a stop of the gate comes before all else, one of another gate does not', () => {
    const over = moveGate(allSigned(yard), walk, { from: 'start', offset: inches(90) });
    expect(Object.values(needsOf(over)).filter((need) => need === 'stop')).toHaveLength(1);
  });
});
