import { localPlane } from '../../../geometry/localPlane.ts';
import { originAt } from '../../../geometry/originAt.ts';

/** What of a walk needs the map projections: a part of the program that is loaded once a walk starts. */
export const earth = { planeAbout: localPlane, originAt };
