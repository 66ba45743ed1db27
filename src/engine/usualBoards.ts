import type { Infill } from '../site/infill.ts';
import { boardFence } from '../trade/boardFence.ts';
import { inches, type Inches } from '../units/inches.ts';
import { usualSpec, type UsualSpec } from './usualSpec.ts';
import { phrase } from '../phrases/phrase.ts';

/** Boards on rails as they are usually nailed up to a height: a start, every value to be changed. */
export const usualInfillOfBoards = (height: Inches): Extract<Infill, { kind: 'boards' }> => {
  const { board, rail, manyRailsFrom } = boardFence;
  return {
    kind: 'boards',
    board: '',
    rail: rail.label,
    rails: height > manyRailsFrom ? 3 : 2,
    width: board.width,
    gap: inches(0),
  };
};

/**
 * A fence of boards on rails of a height, inches, as the trade has it: a start, every value to be changed.
 * What is not said of boards is as for chain link of that height.
 */
export const usualBoards = (height: Inches): UsualSpec => {
  const { spec } = usualSpec(height);
  const { post, gatePost, maxBay, source } = boardFence;
  return {
    id: `spec:boards-${height / 12}-ft`,
    spec: {
      ...spec,
      label: phrase`${height / 12} ft boards on rails`,
      remark: phrase`Boards, rails, posts and bays: ${source.text}.`,
      infill: usualInfillOfBoards(height),
      linePost: post,
      terminalPost: post,
      gatePost,
      maxBay,
      topRail: null,
      terminalAbove: inches(0),
      lineAbove: inches(0),
    },
  };
};
