import { addOffcut } from '../../../src/site/edits/addOffcut.ts';
import { changeOffcut } from '../../../src/site/edits/changeOffcut.ts';
import { removeOffcut } from '../../../src/site/edits/removeOffcut.ts';
import { addAlternative } from '../../../src/site/edits/addAlternative.ts';
import { changeAlternative } from '../../../src/site/edits/changeAlternative.ts';
import { moveAlternative } from '../../../src/site/edits/moveAlternative.ts';
import { removeAlternative } from '../../../src/site/edits/removeAlternative.ts';
import { setLineSpec } from '../../../src/site/edits/setLineSpec.ts';
import { takeAlternative } from '../../../src/site/edits/takeAlternative.ts';
import { addTownRule } from '../../../src/site/edits/addTownRule.ts';
import { changeTownRule } from '../../../src/site/edits/changeTownRule.ts';
import { oneWidth } from '../../../src/site/oneWidth.ts';
import fc from 'fast-check';
import type { SitePoint } from '../../../src/geometry/point.ts';
import { addFeature } from '../../../src/site/edits/addFeature.ts';
import { addGate } from '../../../src/site/edits/addGate.ts';
import { addHardware } from '../../../src/site/edits/addHardware.ts';
import { addPin } from '../../../src/site/edits/addPin.ts';
import { addShots } from '../../../src/site/edits/addShots.ts';
import { changePin } from '../../../src/site/edits/changePin.ts';
import { changeShot } from '../../../src/site/edits/changeShot.ts';
import { followBoundary } from '../../../src/site/edits/followBoundary.ts';
import { setInside } from '../../../src/site/edits/setInside.ts';
import { setLegGrade } from '../../../src/site/edits/setLegGrade.ts';
import { removePin } from '../../../src/site/edits/removePin.ts';
import { removeShots } from '../../../src/site/edits/removeShots.ts';
import { addMark } from '../../../src/site/edits/addMark.ts';
import { addSpec } from '../../../src/site/edits/addSpec.ts';
import { changeFeature } from '../../../src/site/edits/changeFeature.ts';
import { curveLeg } from '../../../src/site/edits/curveLeg.ts';
import { curveThrough } from '../../../src/site/edits/curveThrough.ts';
import { curveToRadius } from '../../../src/site/edits/curveToRadius.ts';
import { closeLine } from '../../../src/site/edits/closeLine.ts';
import { extendLine } from '../../../src/site/edits/extendLine.ts';
import { joinMarks } from '../../../src/site/edits/joinMarks.ts';
import { moveFeature } from '../../../src/site/edits/moveFeature.ts';
import { moveGate } from '../../../src/site/edits/moveGate.ts';
import { moveMark } from '../../../src/site/edits/moveMark.ts';
import { moveMarks } from '../../../src/site/edits/moveMarks.ts';
import { openLine } from '../../../src/site/edits/openLine.ts';
import { orderLeaves } from '../../../src/site/edits/orderLeaves.ts';
import { removeCorner } from '../../../src/site/edits/removeCorner.ts';
import { removeFeature } from '../../../src/site/edits/removeFeature.ts';
import { removeGate } from '../../../src/site/edits/removeGate.ts';
import { removeHardware } from '../../../src/site/edits/removeHardware.ts';
import { removeLine } from '../../../src/site/edits/removeLine.ts';
import { removeMark } from '../../../src/site/edits/removeMark.ts';
import { removeSpec } from '../../../src/site/edits/removeSpec.ts';
import { removeTownRule } from '../../../src/site/edits/removeTownRule.ts';
import { removeVertex } from '../../../src/site/edits/removeVertex.ts';
import { renameLine } from '../../../src/site/edits/renameLine.ts';
import { reverseLine } from '../../../src/site/edits/reverseLine.ts';
import { setGateHinged } from '../../../src/site/edits/setGateHinged.ts';
import { setGateLeaf } from '../../../src/site/edits/setGateLeaf.ts';
import { setGateLeaves } from '../../../src/site/edits/setGateLeaves.ts';
import { setGateWay } from '../../../src/site/edits/setGateWay.ts';
import { setGateOpens } from '../../../src/site/edits/setGateOpens.ts';
import { setLegLength } from '../../../src/site/edits/setLegLength.ts';
import { setSideLength } from '../../../src/site/edits/setSideLength.ts';
import { splitLeg } from '../../../src/site/edits/splitLeg.ts';
import { splitSide } from '../../../src/site/edits/splitSide.ts';
import { startLine } from '../../../src/site/edits/startLine.ts';
import { takeTownRules } from '../../../src/site/edits/takeTownRules.ts';
import type { GateWay } from '../../../src/site/gateWay.ts';
import type {
  AlternativeId,
  FeatureId,
  GateId,
  LeafId,
  LineId,
  SpecId,
  VertexId,
} from '../../../src/site/ids.ts';
import type { Site } from '../../../src/site/site.ts';
import type { TownRule } from '../../../src/site/townRule.ts';
import { inches } from '../../../src/units/inches.ts';
import { radians } from '../../../src/units/radians.ts';

/** What a hand might do next: a verb by its name, and numbers that choose what it is done to. */
export interface Move {
  readonly verb: string;
  readonly pick: number;
  readonly other: number;
  readonly at: SitePoint;
}

const keysOf = <T extends object>(map: T) => Object.keys(map) as (keyof T)[];

/** One of a list by a number; RangeError, as the edits throw, for an empty list. */
const one = <T>(list: readonly T[], n: number): T => {
  const picked = list[n % list.length];
  if (picked === undefined) throw new RangeError('nothing to pick from');
  return picked;
};

const line = (site: Site, move: Move): LineId => one(keysOf(site.lines), move.pick);
const gate = (site: Site, move: Move): GateId => one(keysOf(site.gates), move.pick);

const vertex = (site: Site, move: Move): VertexId => {
  const path = site.lines[line(site, move)]?.path ?? {};
  return one(keysOf(path), move.other);
};

const leaf = (site: Site, move: Move): LeafId =>
  one(keysOf(site.gates[gate(site, move)]?.leaves ?? {}), move.other);

const feature = (site: Site, move: Move): FeatureId => one(keysOf(site.features), move.pick);

const corner = (site: Site, move: Move): VertexId => {
  const thing = site.features[feature(site, move)];
  return one(keysOf(thing !== undefined && 'path' in thing ? thing.path : {}), move.other);
};

/** A mark that is there, or a point where one will be. */
const place = (site: Site, { other, at }: Move) =>
  other % 3 === 0 ? one(keysOf(site.marks), other) : at;

/** A way of closing an opening, one of each kind in turn. */
export const wayOf = (n: number): GateWay => {
  const turns = radians(Math.PI / (1 + (n % 3)));
  return one<GateWay>(
    [
      { kind: 'swing', turns },
      { kind: 'centre stop', stop: inches(1 + (n % 5)), turns },
      {
        kind: 'cantilever',
        overlap: inches(n % 7),
        counterbalance: inches(48 + n),
        rollers: inches(40 + n),
        behind: inches(n % 9),
        stores: n % 2 === 0 ? 'start' : 'end',
      },
      { kind: 'gap', clear: inches(2 + 8 * n) },
    ],
    n,
  );
};

const from = (n: number) => one(['start', 'end', 'middle'] as const, n);

/** A line along one of the boundaries. */
const along = (site: Site, { pick, other }: Move): Site => {
  const lots = keysOf(site.features).filter((id) => site.features[id]?.kind === 'boundary');
  return followBoundary(site, one(lots, pick), 'spec:1', other / 4);
};

const ledLines = (site: Site): LineId[] =>
  keysOf(site.lines).filter((id) => (site.lines[id]?.follows ?? null) !== null);

/** Rules of two invented towns; some say nothing, and are refused. */
const inventedRule = (n: number): TownRule => ({
  town: n % 2 ? 'Invented Falls' : 'Inventedville',
  measure: n % 3 ? 'fence no higher than' : null,
  limit: n % 3 ? inches(n) : null,
  words: n % 5 ? 'In front yards' : '',
  source: '',
});

const build = (site: Site, n: number): SpecId => one(keysOf(site.specs), n);

const alternative = (site: Site, { pick }: Move): AlternativeId =>
  one(keysOf(site.alternatives), pick);

/** A build put in place of that of a line, in an alternative. */
const instead = (site: Site, move: Move): Site => {
  // rarely are there an alternative and a second build already
  const named = keysOf(site.alternatives).length > 0 ? site : addAlternative(site, 'First');
  const [first] = Object.values(named.specs);
  const so = first === undefined ? named : addSpec(named, `spec:${2 + (move.other % 3)}`, first);
  const built = so.lines[line(so, move)]?.spec ?? 'spec:1';
  return changeAlternative(so, alternative(so, move), {
    instead: { [built]: build(so, move.other) },
  });
};

/** A site of which something lies in the yard. */
const lying = (site: Site): Site =>
  // rarely does something already
  keysOf(site.offcuts).length > 0
    ? site
    : addOffcut(site, { of: 'rail', length: inches(60), count: 2 });

/** Every verb that a random hand knows. */
export const verbs: Readonly<Record<string, (site: Site, move: Move) => Site>> = {
  addMark: (site, { at }) => addMark(site, at),
  moveMark: (site, { pick, at }) => moveMark(site, one(keysOf(site.marks), pick), at),
  moveMarks: (site, { pick, at }) => moveMarks(site, keysOf(site.marks).slice(0, pick % 4), at),
  removeMark: (site, { pick }) => removeMark(site, one(keysOf(site.marks), pick)),
  startLine: (site, move) => startLine(site, 'spec:1', place(site, move)),
  extendLine: (site, move) =>
    extendLine(site, line(site, move), place(site, move), move.other % 2 === 0 ? 'end' : 'start'),
  closeLine: (site, move) => closeLine(site, line(site, move)),
  splitLeg: (site, move) => splitLeg(site, line(site, move), vertex(site, move), place(site, move)),
  curveLeg: (site, move) =>
    curveLeg(site, {
      line: line(site, move),
      leg: vertex(site, move),
      bow: move.other % 5 === 0 ? 0 : move.at.y / 8,
    }),
  curveToRadius: (site, move) =>
    curveToRadius(site, {
      line: line(site, move),
      leg: vertex(site, move),
      radius: Math.abs(move.at.x),
      side: move.other % 2 === 0 ? 'left' : 'right',
    }),
  curveThrough: (site, move) => curveThrough(site, line(site, move), vertex(site, move), move.at),
  removeVertex: (site, move) => removeVertex(site, line(site, move), vertex(site, move)),
  removeLine: (site, move) => removeLine(site, line(site, move)),
  reverseLine: (site, move) => reverseLine(site, line(site, move)),
  setLegLength: (site, move) =>
    setLegLength(site, line(site, move), vertex(site, move), Math.abs(move.at.x)),
  renameLine: (site, move) => renameLine(site, line(site, move), String(move.other)),
  addGate: (site, move) =>
    addGate(site, {
      label: '',
      line: line(site, move),
      leg: vertex(site, move),
      anchor: { from: from(move.other), offset: inches(move.at.x) },
      leaves: [1, 2]
        .slice(move.other % 2)
        .map((n) => ({ widths: oneWidth(inches(30 + n)), from: 'measured', hinge: 'hardware:1' })),
      latch: 'hardware:2',
      opens: 'left',
      hingedAt: 'end',
      nominal: null,
      post: null,
    }),
  followBoundary: (site, move) => along(site, move),
  setInside: (site, move) => {
    const led = ledLines(site);
    // rarely is there one that follows a boundary already
    const so = led.length === 0 ? along(site, move) : site;
    const id = one(ledLines(so), move.pick);
    return setInside(so, id, move.other % 3 === 0 ? null : move.other / 2);
  },
  setLegGrade: (site, move) =>
    setLegGrade(
      site,
      line(site, move),
      vertex(site, move),
      move.other % 2 === 0 ? 'step' : 'follow',
    ),
  addPin: (site, move) =>
    addPin(site, {
      line: line(site, move),
      leg: vertex(site, move),
      anchor: { from: from(move.other), offset: inches(move.at.y) },
      holds:
        move.other % 2 === 0
          ? { kind: 'post' }
          : { kind: 'clear', reach: inches(1 + (move.other % 30)) },
    }),
  changePin: (site, move) =>
    changePin(site, one(keysOf(site.pins), move.pick), {
      anchor: { from: from(move.other), offset: inches(move.at.x) },
    }),
  removePin: (site, { pick }) => removePin(site, one(keysOf(site.pins), pick)),
  addShots: (site, { at, other }) =>
    addShots(site, [{ x: at.x, y: at.y, z: inches(other / 4), label: '' }]),
  changeShot: (site, { pick, other }) =>
    changeShot(site, one(keysOf(site.shots), pick), { z: inches(-other) }),
  removeShots: (site, { pick }) => removeShots(site, [one(keysOf(site.shots), pick)]),
  moveGate: (site, move) =>
    moveGate(site, gate(site, move), { from: from(move.other), offset: inches(move.at.y) }),
  removeGate: (site, move) => removeGate(site, gate(site, move)),
  setGateLeaf: (site, move) =>
    setGateLeaf(site, gate(site, move), leaf(site, move), {
      widths: oneWidth(inches(1 + move.other)),
    }),
  orderLeaves: (site, move) =>
    orderLeaves(
      site,
      gate(site, move),
      keysOf(site.gates[gate(site, move)]?.leaves ?? {}).map((id, n) => {
        return { id, width: inches(move.other + n) };
      }),
    ),
  setGateLeaves: (site, move) => setGateLeaves(site, gate(site, move), move.other % 2 ? 1 : 2),
  setGateWay: (site, move) =>
    setGateWay(site, gate(site, move), wayOf(move.other), {
      hinge: 'hardware:1',
      latch: 'hardware:2',
    }),
  setGateOpens: (site, move) =>
    setGateOpens(site, gate(site, move), move.other % 2 ? 'left' : 'right'),
  setGateHinged: (site, move) =>
    setGateHinged(site, gate(site, move), move.other % 2 ? 'start' : 'end'),
  addFeature: (site, move) =>
    addFeature(
      site,
      move.other % 2 === 0
        ? { kind: 'pool', label: '' }
        : { kind: 'boundary', label: '', closed: true, setback: inches(0) },
      [place(site, move), move.at, { x: 1, y: 2 }],
    ),
  changeFeature: (site, { pick, other }) =>
    changeFeature(site, one(keysOf(site.features), pick), { label: String(other) }),
  moveFeature: (site, { pick, at }) => moveFeature(site, one(keysOf(site.features), pick), at),
  splitSide: (site, move) =>
    splitSide(site, feature(site, move), corner(site, move), place(site, move)),
  removeCorner: (site, move) => removeCorner(site, feature(site, move), corner(site, move)),
  setSideLength: (site, move) =>
    setSideLength(site, feature(site, move), corner(site, move), Math.abs(move.at.x)),
  joinMarks: (site, { pick, other }) =>
    joinMarks(site, one(keysOf(site.marks), pick), one(keysOf(site.marks), other)),
  openLine: (site, move) => openLine(site, line(site, move)),
  addSpec: (site, { other }) => {
    const [spec] = Object.values(site.specs);
    return spec === undefined ? site : addSpec(site, `spec:${other}`, spec);
  },
  setLineSpec: (site, move) => setLineSpec(site, line(site, move), build(site, move.other)),
  addAlternative: (site, { other }) =>
    addAlternative(site, ' '.repeat(other % 2) + (other % 7 || '')),
  changeAlternative: (site, move) => instead(site, move),
  moveAlternative: (site, move) => {
    // rarely are there two already
    const so =
      keysOf(site.alternatives).length > 1
        ? site
        : addAlternative(addAlternative(site, 'One way'), 'Another way');
    return moveAlternative(so, alternative(so, move), move.other % 2 ? 'before' : 'behind');
  },
  removeAlternative: (site, move) => removeAlternative(site, alternative(site, move)),
  takeAlternative: (site, move) => {
    const so = instead(site, move);
    return takeAlternative(so, alternative(so, move), `was ${move.other}`);
  },
  removeSpec: (site, { pick }) => removeSpec(site, one(keysOf(site.specs), pick)),
  addHardware: (site, { other }) => {
    const [part] = Object.values(site.hardware);
    return part === undefined ? site : addHardware(site, `hardware:${other}`, part);
  },
  removeHardware: (site, { pick }) => removeHardware(site, one(keysOf(site.hardware), pick)),
  removeFeature: (site, { pick }) => removeFeature(site, one(keysOf(site.features), pick)),
  addTownRule: (site, { other }) => addTownRule(site, inventedRule(other)),
  changeTownRule: (site, { pick, other }) =>
    changeTownRule(site, one(keysOf(site.townRules), pick), { limit: inches(other) }),
  removeTownRule: (site, { pick }) => removeTownRule(site, one(keysOf(site.townRules), pick)),
  addOffcut: (site, { pick, other }) =>
    addOffcut(site, { of: `rail ${pick}`, length: inches(other), count: other }),
  changeOffcut: (site, { pick, other }) => {
    const so = lying(site);
    return changeOffcut(so, one(keysOf(so.offcuts), pick), { count: other - 2 });
  },
  removeOffcut: (site, { pick }) => removeOffcut(site, one(keysOf(site.offcuts), pick)),
  takeTownRules: (site, { pick, other }) =>
    takeTownRules(site, { 'town-rule:kept': inventedRule(pick) }, inventedRule(other).town),
};

/** A site after a move; the same site when the move cannot be made. Other errors are errors. */
export const after = (site: Site, move: Move): Site => {
  try {
    return verbs[move.verb]?.(site, move) ?? site;
  } catch (error) {
    if (error instanceof RangeError && !/call stack/.test(error.message)) return site;
    throw error;
  }
};

const grid = fc.integer({ min: -64_000, max: 64_000 }).map((n) => n / 64);

export const anyPoint: fc.Arbitrary<SitePoint> = fc.record({ x: grid, y: grid });

export const anyMove: fc.Arbitrary<Move> = fc.record({
  verb: fc.constantFrom(...Object.keys(verbs)),
  pick: fc.nat(50),
  other: fc.nat(50),
  at: anyPoint,
});

/** What a random hand does in a while. */
export const anyMoves = fc.array(anyMove, { maxLength: 40 });
