import type { Site } from '../../site/site.ts';
import type { Carry } from '../carry/carry.ts';
import type { Flag } from '../flag.ts';
import { surroundingsOf, type Surroundings } from '../sweep/meetings.ts';
import { checkBarbedWire } from './checkBarbedWire.ts';
import { checkBoundary } from './checkBoundary.ts';
import { checkCatch } from './checkCatch.ts';
import { checkCurves } from './checkCurves.ts';
import { checkFits } from './checkFits.ts';
import { checkFoundations } from './checkFoundations.ts';
import { checkGates } from './checkGates.ts';
import { checkGround } from './checkGround.ts';
import { checkHangings } from './checkHangings.ts';
import { checkHardware } from './checkHardware.ts';
import { checkHeightZones } from './checkHeightZones.ts';
import { checkHoles } from './checkHoles.ts';
import { checkKeepOuts } from './checkKeepOuts.ts';
import { checkLeafGround } from './checkLeafGround.ts';
import { checkLeaves } from './checkLeaves.ts';
import { checkLines } from './checkLines.ts';
import { checkNominal } from './checkNominal.ts';
import { checkOverhead } from './checkOverhead.ts';
import { checkPanels } from './checkPanels.ts';
import { checkPins } from './checkPins.ts';
import { checkPool } from './checkPool.ts';
import { checkPostSizes } from './checkPostSizes.ts';
import { checkReceivers } from './checkReceivers.ts';
import { checkRoutes } from './checkRoutes.ts';
import { checkSelvage } from './checkSelvage.ts';
import { checkSet } from './checkSet.ts';
import { checkSigned } from './checkSigned.ts';
import { checkSlides } from './checkSlides.ts';
import { checkSpots } from './checkSpots.ts';
import { checkStands } from './checkStands.ts';
import { checkStructure } from './checkStructure.ts';
import { checkSurvey } from './checkSurvey.ts';
import { checkSweeps } from './checkSweeps.ts';
import { checkTownRules } from './checkTownRules.ts';
import { checkWalls } from './checkWalls.ts';
import type { LaidYard } from './laidYard.ts';
import { englishOf } from '../../phrases/phrase.ts';

const rank: Readonly<Record<Flag['level'], number>> = { stop: 0, settle: 1, caution: 2 };

const sortKey = ({ place, rule, message, said = message }: Flag): string =>
  [place.kind, place.id, rule, said].join('|');

/** A flag with what it says in English, where that is another text. */
const withEnglish = (flag: Flag): Flag => {
  const said = englishOf(flag.message);
  return said === flag.message ? flag : { ...flag, said };
};

/** Every flag that stands on a site: `stop` first, then `settle`, then `caution`, each by place. */
export const flagsOf = (site: Site, yard: Omit<LaidYard, 'around'>, carry: Carry): Flag[] => {
  let known: Surroundings | null = null;
  const around = (): Surroundings => (known ??= surroundingsOf(site, yard, carry));
  const laid: LaidYard = { ...yard, around };
  return [
    ...checkGates(site, laid),
    ...checkCatch(site, laid),
    ...checkLeaves(site, laid),
    ...checkNominal(site, laid),
    ...checkLines(site, laid),
    ...checkSpots(site, laid),
    ...checkHoles(site, laid, carry),
    ...checkKeepOuts(site, laid, carry),
    ...checkBoundary(site, laid),
    ...checkPins(site, laid),
    ...checkGround(site, laid, carry),
    ...checkPanels(site, laid),
    ...checkLeafGround(site, laid, carry),
    ...checkHardware(site, laid),
    ...checkFits(site, laid, carry),
    ...checkSigned(site, laid),
    ...checkSet(site, laid),
    ...checkSlides(site, laid),
    ...checkSweeps(site, laid, carry),
    ...checkStands(site, laid, carry),
    ...checkReceivers(site, laid),
    ...checkWalls(site, laid),
    ...checkCurves(site, laid),
    ...checkFoundations(site, laid),
    ...checkSurvey(site, laid),
    ...checkStructure(site, laid),
    ...checkPostSizes(site, laid),
    ...checkSelvage(site, laid),
    ...checkPool(site, laid),
    ...checkRoutes(site, laid),
    ...checkHangings(site, laid, carry),
    ...checkTownRules(site, laid),
    ...checkBarbedWire(site, laid),
    ...checkOverhead(site, laid),
    ...checkHeightZones(site, laid),
  ]
    .map(withEnglish)
    .toSorted((a, b) => rank[a.level] - rank[b.level] || (sortKey(a) < sortKey(b) ? -1 : 1));
};
