import type { Tie } from '../geometry/tie.ts';
import type { Underlay } from './underlay.ts';

/** The ties by which a picture lies. */
export const tiesOf = ({ ties }: Pick<Underlay, 'ties'>): Tie[] => Object.values(ties);
