import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { restedCheck } from '../../../src/engine/sign/restedCheck.ts';
import { standingsOf } from '../../../src/engine/sign/standingsOf.ts';
import { renameGate } from '../../../src/site/edits/renameGate.ts';
import { signGate } from '../../../src/site/edits/signGate.ts';
import type { GateId } from '../../../src/site/ids.ts';
import type { Site } from '../../../src/site/site.ts';
import { bare, fence, gateOn } from '../../engine/plainYard.ts';

const run = fence(bare, [
  [0, 0],
  [600, 0],
]);
const gated = gateOn(gateOn(run, 0, { from: 'start', offset: 60 }, 2), 0, {
  from: 'end',
  offset: 60,
});

/** The double gate and the single one of the yard. */
export const [drive = 'gate:none', walk = 'gate:none'] = Object.keys(gated.gates) as GateId[];

/** A fence of 50 ft with a double gate of two leaves of 56 7/8 in and a single one of 44 in. */
export const yard: Site = renameGate(renameGate(gated, drive, 'Drive gate'), walk, 'Walk gate');

/** A site with every opening signed off as it stands. */
export const allSigned = (site: Site): Site =>
  standingsOf(site, layOutSite(site)).reduce(
    (so, { id, rested }) =>
      signGate(so, id, { by: 'AB', on: '2026-11-25', check: restedCheck(rested), rested }),
    site,
  );
