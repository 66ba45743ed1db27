import { radians } from '../units/radians.ts';
import type { Gate, Leaf } from './gate.ts';
import type { Hardware } from './hardware.ts';

/** What of a gate holds until somebody says otherwise: hinged leaves that open by a quarter. */
export const untoldGate = {
  way: { kind: 'swing', turns: radians(Math.PI / 2) },
  bottom: null,
  closer: null,
  holdOpen: false,
  receiver: null,
  nominal: null,
  post: null,
  signed: null,
  asSet: null,
  latchHeight: null,
  threshold: null,
  route: null,
  powered: false,
} as const satisfies Partial<Gate>;

/** What of a leaf holds until somebody says otherwise. */
export const untoldLeaf = { height: null, frame: null, on: '' } as const satisfies Partial<Leaf>;

/** What of a part holds until somebody says otherwise: its size is not sure. */
export const untoldPart = {
  spread: 'uncertain',
  on: '',
  readings: [],
  fits: { post: null, frame: null },
  pin: null,
  remark: '',
} as const satisfies Partial<Hardware>;
