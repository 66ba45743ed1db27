import { radians } from '../units/radians.ts';
import type { Primitive } from '../drawing/primitive.ts';
import type { Snap } from './snap.ts';
import { phrase } from '../phrases/phrase.ts';
import { theThing } from './theThing.ts';

const ring = (snap: Snap, radius: number): Primitive => ({
  kind: 'circle',
  centre: snap.point,
  radius: 0,
  least: radius,
  pen: 'guide',
  ink: null,
});

const said = (snap: Snap): string | null => {
  if (snap.lines.length > 0) return snap.lines.map(({ label }) => label).join(', ');
  if (snap.on === null) return null;
  if (snap.on.kind === 'mark') return phrase`at the mark`;
  return snap.on.kind === 'leg' ? phrase`on the fence` : phrase`on the ${theThing[snap.on.as]}`;
};

/**
 * What shows the hand where it is drawn to: the lines, a ring on a mark or edge, and a word.
 * Radii and letters in paper inches.
 */
export const snapGuides = (snap: Snap): Primitive[] => {
  const lines = snap.lines.map(({ origin }): Primitive => ({
    kind: 'polyline',
    points: [origin, snap.point],
    closed: false,
    pen: 'guide',
  }));
  const text = said(snap);
  const word: Primitive[] =
    text === null
      ? []
      : [
          {
            kind: 'text',
            at: snap.point,
            text,
            size: 0.14,
            rise: -0.2,
            angle: radians(0),
            ink: 'dimension',
            weight: 'regular',
            far: 'leave out',
          },
        ];
  if (snap.on === null) return [...lines, ...word];
  return [...lines, ring(snap, snap.on.kind === 'mark' ? 0.1 : 0.06), ...word];
};
