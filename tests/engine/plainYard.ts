import { untoldPart } from '../../src/site/untold.ts';
import { oneWidth } from '../../src/site/oneWidth.ts';
import { emptySite } from '../../src/site/emptySite.ts';
import { addGate, type NewGate } from '../../src/site/edits/addGate.ts';
import { closeLine } from '../../src/site/edits/closeLine.ts';
import { extendLine } from '../../src/site/edits/extendLine.ts';
import { startLine } from '../../src/site/edits/startLine.ts';
import type { FenceSpec } from '../../src/site/fenceSpec.ts';
import type { Hardware } from '../../src/site/hardware.ts';
import type { GateId, LineId } from '../../src/site/ids.ts';
import { legsOf } from '../../src/site/legsOf.ts';
import { nextId } from '../../src/site/nextId.ts';
import { roundPost } from '../../src/site/roundPost.ts';
import type { Site } from '../../src/site/site.ts';
import { fromDegrees } from '../../src/units/radians.ts';
import { inches } from '../../src/units/inches.ts';

const pipe = (label: string, od: number) => ({ label, od: inches(od), wall: inches(0.13) });
const post = (label: string, od: number) => roundPost(pipe(label, od));

export const spec: FenceSpec = {
  label: '6 ft',
  remark: '',
  infill: { kind: 'chain link' },
  fabricHeight: inches(72),
  maxBay: inches(120),
  cornerAngle: fromDegrees(30),
  linePost: post('2', 1.9),
  terminalPost: post('2-1/2', 2.375),
  gatePost: post('3', 2.875),
  topRail: pipe('1-5/8', 1.66),
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

const part = (kind: Hardware['kind'], low: number, planned: number, high: number): Hardware => ({
  kind,
  label: kind,
  takes: { low: inches(low), planned: inches(planned), high: inches(high) },
  ...untoldPart,
  from: 'measured',
});

export const hardware: Site['hardware'] = {
  'hardware:hinge': part('hinge', 1.875, 1.875, 1.875),
  'hardware:fork': part('latch', 2, 2.125, 2.25),
  'hardware:rod': part('drop rod', 2.5, 2.5, 3),
};

export const bare: Site = emptySite({ specs: { 'spec:six': spec }, hardware });

type Spot = readonly [number, number];

/** Adds a fence line through the spots, inches; closes it when asked. */
export const fence = (
  site: Site,
  spots: readonly Spot[],
  how: 'open' | 'closed' = 'open',
): Site => {
  const [first, ...rest] = spots.map(([x, y]) => ({ x, y }));
  if (first === undefined) return site;
  const id = nextId(site, 'line') as LineId;
  const started = startLine(site, 'spec:six', first);
  const drawn = rest.reduce((so, place) => extendLine(so, id, place, 'end'), started);
  return how === 'closed' ? closeLine(drawn, id) : drawn;
};

/** A gate for a leg of a line, counted from 0: one leaf of 44 in, or two of 56 7/8 in. */
export const gateOn = (
  site: Site,
  leg: number,
  anchor: { from: 'start' | 'end' | 'middle'; offset: number },
  leaves: 1 | 2 = 1,
): Site => {
  const line = Object.keys(site.lines)[0] as LineId;
  const found = site.lines[line];
  const id = found === undefined ? undefined : legsOf(found)[leg]?.id;
  if (id === undefined) throw new Error(`no leg ${leg}`);
  const leaf = {
    widths: oneWidth(inches(leaves === 1 ? 44 : 56.875)),
    from: 'measured' as const,
    hinge: 'hardware:hinge' as const,
  };
  const gate: NewGate = {
    label: '',
    line,
    leg: id,
    anchor: { from: anchor.from, offset: inches(anchor.offset) },
    leaves: leaves === 1 ? [leaf] : [leaf, leaf],
    latch: leaves === 1 ? 'hardware:fork' : 'hardware:rod',
    opens: 'left',
    hingedAt: 'start',
    nominal: null,
    post: null,
  };
  return addGate(site, gate);
};

export const firstGate = (site: Site): GateId => Object.keys(site.gates)[0] as GateId;
