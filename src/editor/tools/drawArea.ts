import type { Feature } from '../../site/feature.ts';
import type { PenName } from '../../drawing/pens.ts';
import { drawShape } from './drawShape.ts';

type AreaKind = Extract<Feature, { kind: 'building' | 'paving' | 'pool' | 'keep-out' }>['kind'];

/** The tool that draws one kind of ground with an edge all round, corner by corner. */
export const drawArea = (kind: AreaKind) =>
  drawShape({
    noun: kind === 'paving' ? 'piece of paving' : kind,
    pen: kind satisfies PenName,
    ends: 'closed',
    fields: () => ({ kind, label: '' }),
  });
