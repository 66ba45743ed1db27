import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { curveFaults } from '../../../src/engine/calls/curveFaults.ts';
import { solveCurve, type CurveGiven } from '../../../src/engine/calls/solveCurve.ts';
import { inches } from '../../../src/units/inches.ts';
import { fromDegrees, radians } from '../../../src/units/radians.ts';

const style = { system: 'decimal feet', fraction: 16 } as const;

const solved = (given: CurveGiven) => {
  const curve = solveCurve(given);
  if (!curve.ok) throw new Error(curve.reason);
  return curve.value;
};

const ft = (feet: number) => inches(12 * feet);

describe('solveCurve', () => {
  it('[J4] a radius of 160.00 ft through 33°17′28″ is an arc of 92.97 ft', () => {
    // rpls.com, “How do you describe a curve”, strictly surveying, page 4: a deed line of a surveyor
    const { arc } = solved({
      radius: ft(160),
      delta: fromDegrees(33 + 17 / 60 + 28 / 3600),
    });
    expect(arc / 12).toBeCloseTo(92.97, 2);
  });

  it('[J4] a quarter of 20 ft radius has a chord of 28.28427 ft', () => {
    // the same thread: “the distance is actually 28.28427...”
    const { chord, tangent } = solved({ radius: ft(20), delta: fromDegrees(90) });
    expect(chord / 12).toBeCloseTo(28.28427, 5);
    expect((tangent ?? NaN) / 12).toBeCloseTo(20, 9);
  });

  it('[J4] any two measures of a curve give the others', () => {
    const angles = fc.double({ min: 0.01, max: 3.1, noNaN: true });
    const radii = fc.double({ min: 12, max: 60_000, noNaN: true });
    fc.assert(
      fc.property(radii, angles, (radius, delta) => {
        const whole = {
          radius: inches(radius),
          delta: radians(delta),
          arc: inches(radius * delta),
          chord: inches(2 * radius * Math.sin(delta / 2)),
          tangent: inches(radius * Math.tan(delta / 2)),
        };
        const keys = ['radius', 'delta', 'arc', 'chord', 'tangent'] as const;
        for (const [n, one] of keys.entries()) {
          for (const other of keys.slice(n + 1)) {
            const found = solved({ [one]: whole[one], [other]: whole[other] });
            // an arc hardly differs from its chord where it is flat: half the digits are lost there
            expect(Math.abs(found.radius - radius)).toBeLessThan((1e-9 / delta ** 2) * radius);
            expect(Math.abs(found.delta - delta)).toBeLessThan(1e-9 / delta ** 2);
          }
        }
      }),
    );
  });

  it('[J4] more than half a circle has no tangent length', () => {
    expect(solved({ radius: ft(50), delta: fromDegrees(270) })).toMatchObject({ tangent: null });
    expect(solved({ radius: ft(50), arc: ft(200) }).delta).toBeCloseTo(4, 12);
  });

  it.each([
    [{ radius: ft(125) }, 'tells too little of its curve: expected two of radius'],
    [{}, 'tells too little of its curve'],
    [{ radius: ft(10), chord: ft(21) }, 'has figures that no curve has'],
    [{ arc: ft(10), chord: ft(11) }, 'has figures that no curve has'],
    [{ radius: ft(10), arc: ft(70) }, 'has figures that no curve has'],
    [{ arc: ft(21), tangent: ft(10) }, 'has figures that no curve has'],
    [{ chord: ft(21), tangent: ft(10) }, 'has figures that no curve has'],
  ])('[J4] %j makes no curve', (given, reason) => {
    const curve = solveCurve(given);
    expect(curve.ok ? 'read' : curve.reason).toContain(reason);
  });

  it('[J5] figures that agree as plats round them are not doubted, others are told', () => {
    const given = {
      radius: ft(125),
      delta: fromDegrees(34 + 12 / 60 + 20 / 3600),
      arc: ft(74.63),
      chord: ft(73.5),
    };
    expect(curveFaults(given, solved(given), style)).toEqual([]);
    const wrong = { ...given, arc: ft(76.43), tangent: ft(3) };
    expect(curveFaults(wrong, solved(wrong), style)).toEqual([
      `the arc length is told as 76.43', the other figures make it 74.62'`,
      `the tangent length is told as 3.00', the other figures make it 38.46'`,
    ]);
    const turned = { radius: ft(125), arc: ft(74.63), delta: fromDegrees(43) };
    const round = solved({ radius: ft(125), arc: ft(74.63) });
    expect(curveFaults(turned, round, style)).toEqual([
      `the central angle is told as 43°00'00", the other figures make it 34°12'28"`,
    ]);
  });
});
