import { roundPost } from '../../src/site/roundPost.ts';
import { untoldPart } from '../../src/site/untold.ts';
import type { FenceSpec } from '../../src/site/fenceSpec.ts';
import type { Plans } from '../../src/store/plans.ts';
import { inches } from '../../src/units/inches.ts';
import { fromDegrees } from '../../src/units/radians.ts';

const pipe = (label: string, od: number) => ({ label, od: inches(od), wall: inches(0.065) });
const post = (label: string, od: number) => roundPost(pipe(label, od));

const spec: FenceSpec = {
  label: 'Invented 4 ft',
  remark: '',
  infill: { kind: 'chain link' },
  fabricHeight: inches(48),
  maxBay: inches(120),
  cornerAngle: fromDegrees(15),
  linePost: post('1-7/8', 1.9),
  terminalPost: post('2-1/2', 2.375),
  gatePost: post('2-1/2', 2.375),
  topRail: pipe('1-3/8', 1.315),
  terminalAbove: inches(2),
  lineAbove: inches(-2),
  pullInterval: null,
  pullGrade: null,
  gapUnder: inches(2),
  wallGap: inches(2),
  foundationToe: null,
  onCurves: 'by radius',
  middleRail: null,
  bottomRail: null,
  barbedWire: null,
  grade: null,
  mesh: null,
  wire: null,
  selvage: null,
  solid: null,
  leastDepth: inches(0),
};

const spread = (low: number, planned: number, high: number) => ({
  low: inches(low),
  planned: inches(planned),
  high: inches(high),
});

/** Invented choices for the next thing drawn: a walk gate of one leaf of 42 in. */
export const samplePlans: Plans = {
  fence: { id: 'spec:invented', spec },
  gate: {
    label: 'Walk gate',
    leaves: [
      {
        width: inches(42),
        from: 'measured',
        hinge: {
          id: 'hardware:hinge',
          hardware: {
            kind: 'hinge',
            label: 'Invented hinge',
            takes: spread(1, 1, 1),
            from: 'measured',
            ...untoldPart,
          },
        },
      },
    ],
    latch: {
      id: 'hardware:latch',
      hardware: {
        kind: 'latch',
        label: 'Invented latch',
        takes: spread(1, 1.5, 2),
        from: 'measured',
        ...untoldPart,
      },
    },
    opens: 'left',
    hingedAt: 'start',
    nominal: inches(48),
    post: null,
  },
  utility: { service: 'gas', run: 'buried', width: inches(2), tolerance: inches(24) },
  heights: {
    'sight triangle': { solid: inches(30), open: inches(42) },
    'front yard': { solid: inches(36), open: inches(48) },
  },
  tree: { trunk: inches(6), roots: inches(36) },
};
