import { changed } from './changed.ts';

/** A fence of 54 ft, 4 ft high, between two marks: nothing else on the ground. */
export const straightYard = changed({
  marks: {
    'mark:a': { x: 0, y: 0, label: '', fixed: false },
    'mark:b': { x: 648, y: 0, label: '', fixed: false },
  },
  features: {},
  gates: {},
  'lines/line:yard/path': {
    'vertex:a': { mark: 'mark:a', order: 'a0' },
    'vertex:b': { mark: 'mark:b', order: 'a1' },
  },
  'specs/spec:five-foot/fabricHeight': 48,
});
