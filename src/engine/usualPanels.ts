import type { Infill } from '../site/infill.ts';
import { panelFence } from '../trade/panelFence.ts';
import { inches, type Inches } from '../units/inches.ts';
import { usualSpec, type UsualSpec } from './usualSpec.ts';
import { phrase } from '../phrases/phrase.ts';

/** Panels as they are usually sold: a start, every value to be changed. */
export const usualInfillOfPanels = (): Extract<Infill, { kind: 'panels' }> => ({
  kind: 'panels',
  panel: '',
  width: panelFence.width,
  last: 'cut',
});

/**
 * A fence of panels of a height, inches, as the trade has it: a start, every value to be changed. What is
 * not said of panels is as for chain link of that height.
 */
export const usualPanels = (height: Inches): UsualSpec => {
  const { spec } = usualSpec(height);
  const { post, gatePost, source } = panelFence;
  return {
    id: `spec:panels-${height / 12}-ft`,
    spec: {
      ...spec,
      label: phrase`${height / 12} ft panels`,
      remark: phrase`Panels and posts: ${source.text}. Take the width from the panel that is there.`,
      infill: usualInfillOfPanels(),
      linePost: post,
      terminalPost: post,
      gatePost,
      topRail: null,
      terminalAbove: inches(2),
      lineAbove: inches(2),
    },
  };
};
