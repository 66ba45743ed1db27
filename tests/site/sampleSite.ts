import { untoldConditions } from '../../src/site/conditions.ts';
import { openDocument } from '../../src/site/openDocument.ts';
import type { Site } from '../../src/site/site.ts';
import { plainWork } from '../../src/site/work.ts';
import { usualCounting } from '../../src/site/counting.ts';
import { usualTrusts } from '../../src/site/trusts.ts';

const pipe = (label: string, od: number) => ({ label, od, wall: 0.065 });
const post = (label: string, od: number) => ({ ...pipe(label, od), section: 'round' as const });

const spec = {
  label: 'Invented 4 ft',
  remark: '',
  infill: { kind: 'chain link' },
  fabricHeight: 48,
  maxBay: 120,
  cornerAngle: 0.25,
  linePost: post('1-7/8', 1.9),
  terminalPost: post('2-1/2', 2.375),
  gatePost: post('2-1/2', 2.375),
  topRail: pipe('1-3/8', 1.315),
  terminalAbove: 2,
  lineAbove: -2,
  pullInterval: null,
  pullGrade: null,
  gapUnder: 2,
  wallGap: 2,
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
  leastDepth: 0,
};

const leaf = { height: null, frame: null, on: '' };

const gate = {
  way: { kind: 'swing', turns: Math.PI / 2 },
  bottom: null,
  closer: null,
  holdOpen: false,
  receiver: null,
  signed: null,
  asSet: null,
  latchHeight: null,
  threshold: null,
  route: null,
  powered: false,
};

const part = {
  spread: 'uncertain',
  on: '',
  readings: [],
  fits: { post: null, frame: null },
  pin: null,
  remark: '',
};

const takes = { low: 1, planned: 1.5, high: 2 };

/**
 * The plain JSON of an invented site: an open line of three legs with a double gate, a closed one
 * of three with a single gate, a house of which one corner is shared, a tree, and a mark of its own.
 */
export const sampleDocument = {
  format: 'lathline site',
  version: 10,
  lineage: { job: null, saves: {} },
  job: {
    name: 'Invented yard',
    customer: '',
    place: '',
    drawnBy: '',
    date: '',
    revision: '',
    remark: 'Two\nlines',
  },
  lengths: { system: 'feet', fraction: 8 },
  shop: { leafStep: 0.125 },
  counting: usualCounting,
  work: plainWork,
  alternatives: {},
  offcuts: {},
  marks: {
    'mark:1': { x: 0, y: 0, label: 'house corner', fixed: false },
    'mark:2': { x: 0, y: -480, label: '', fixed: false },
    'mark:3': { x: 720, y: -480, label: '', fixed: false },
    'mark:4': { x: 720, y: 0, label: '', fixed: false },
    'mark:5': { x: 0, y: 300, label: '', fixed: false },
    'mark:6': { x: 400, y: 300, label: '', fixed: false },
    'mark:7': { x: 1000, y: 1000, label: '', fixed: false },
    'mark:8': { x: 1480, y: 1000, label: '', fixed: false },
    'mark:9': { x: 1240, y: 1400, label: '', fixed: false },
    'mark:10': { x: -200.5, y: 50.25, label: 'oak', fixed: false },
    'mark:11': { x: 5, y: 5, label: 'pin', fixed: false },
  },
  lines: {
    'line:1': {
      label: 'Back',
      spec: 'spec:1',
      closed: false,
      hook: 'start',
      path: {
        'vertex:1': { mark: 'mark:1', order: 'a0' },
        'vertex:2': { mark: 'mark:2', order: 'a1' },
        'vertex:3': { mark: 'mark:3', order: 'a2' },
        'vertex:4': { mark: 'mark:4', order: 'a3' },
      },
      stepped: {},
      curved: {},
      walls: {},
      follows: null,
      guards: null,
    },
    'line:2': {
      label: 'Pen',
      spec: 'spec:1',
      closed: true,
      hook: 'end',
      path: {
        'vertex:5': { mark: 'mark:7', order: 'a0' },
        'vertex:6': { mark: 'mark:8', order: 'a1' },
        'vertex:7': { mark: 'mark:9', order: 'a2' },
      },
      stepped: {},
      curved: {},
      walls: {},
      follows: null,
      guards: null,
    },
  },
  gates: {
    'gate:1': {
      label: 'Drive',
      line: 'line:1',
      leg: 'vertex:2',
      anchor: { from: 'start', offset: 96 },
      leaves: {
        'leaf:1': {
          ...leaf,
          order: 'a0',
          widths: { top: 56.875, middle: null, bottom: null },
          from: 'measured',
          hinge: 'hardware:1',
        },
        'leaf:2': {
          ...leaf,
          order: 'a1',
          widths: { top: 57, middle: null, bottom: null },
          from: 'measured',
          hinge: 'hardware:1',
        },
      },
      latch: 'hardware:3',
      opens: 'left',
      hingedAt: 'start',
      ...gate,
      nominal: 120,
      post: null,
    },
    'gate:2': {
      label: 'Pen gate',
      line: 'line:2',
      leg: 'vertex:7',
      anchor: { from: 'middle', offset: 12.5 },
      leaves: {
        'leaf:3': {
          ...leaf,
          order: 'a0',
          widths: { top: 40, middle: null, bottom: null },
          from: 'catalogue',
          hinge: 'hardware:1',
        },
      },
      latch: 'hardware:2',
      opens: 'right',
      hingedAt: 'end',
      ...gate,
      nominal: null,
      post: post('4', 4),
    },
  },
  features: {
    'feature:1': {
      kind: 'building',
      label: 'House',
      path: {
        'vertex:8': { mark: 'mark:1', order: 'a0' },
        'vertex:9': { mark: 'mark:5', order: 'a1' },
        'vertex:10': { mark: 'mark:6', order: 'a2' },
      },
    },
    'feature:2': { kind: 'tree', label: 'Oak', mark: 'mark:10', trunk: 12, roots: 96 },
  },
  pins: {
    'pin:1': {
      line: 'line:1',
      leg: 'vertex:3',
      anchor: { from: 'end', offset: 100 },
      holds: { kind: 'post' },
    },
    'pin:2': {
      line: 'line:2',
      leg: 'vertex:5',
      anchor: { from: 'middle', offset: -12 },
      holds: { kind: 'clear', reach: 18 },
    },
  },
  levels: { allowable: null, notes: {} },
  observations: {},
  trusts: usualTrusts,
  conditions: untoldConditions,
  acceptances: {},
  townRules: {},
  origin: null,
  underlays: {},
  pictures: {},
  shots: { 'shot:1': { x: 10, y: -20, z: 3.5, label: 'step' } },
  specs: { 'spec:1': spec },
  hardware: {
    'hardware:1': { kind: 'hinge', label: 'Invented hinge', takes, from: 'book', ...part },
    'hardware:2': { kind: 'latch', label: 'Invented latch', takes, from: 'book', ...part },
    'hardware:3': { kind: 'drop rod', label: 'Invented rod', takes, from: 'book', ...part },
  },
} as const;

const opened = openDocument(sampleDocument);
if (!opened.ok) throw new Error(opened.reason);

/** The same site, opened. */
export const sampleSite: Site = opened.value;
