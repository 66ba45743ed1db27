import type { Parsed } from '../../units/parsed.ts';
import type { Call } from './call.ts';
import type { Clause } from './clauses.ts';
import { readCall } from './readCall.ts';
import { solveCurve } from './solveCurve.ts';

/** How much of a call there is: 0 for none, and one more for each thing that a curve needs. */
const worth = (call: Parsed<Call | null>): number => {
  if (!call.ok || call.value === null) return 0;
  if (call.value.kind === 'straight') return 100;
  const { given, chord } = call.value.told;
  return 1 + Object.keys(given).length + (chord === null ? 0 : 1);
};

const isEnough = (call: Parsed<Call | null>): boolean => {
  if (!call.ok || call.value === null) return false;
  return call.value.kind === 'straight' || solveCurve(call.value.told.given).ok;
};

const back = /^(?:and )?(?:back )?to the (?:true )?(?:point|place) of (?:beginning|commencement)/i;

/** Whether a clause goes on with the call of the one before it, which is not whole or is a curve. */
const goesOn = (before: Clause, next: Clause, bare: number): Clause | null => {
  if (back.test(next.text)) return { ...before, text: `${before.text}; ${next.text}` };
  if (next.begins !== 'goes on') return null;
  const [first, own] = [readCall(before.text, bare), readCall(next.text, bare)];
  const isCurve = first.ok && first.value?.kind === 'curve';
  if (isEnough(first) && !isCurve) return null;
  if (own.ok && own.value?.kind === 'straight' && first.ok) return null;
  const text = `${before.text}; ${next.text}`;
  const whole = readCall(text, bare);
  return worth(whole) > worth(first) ? { ...before, text } : null;
};

/**
 * Clauses with those put together that make one call only together, such as a curve whose radius stands
 * behind a semicolon. `bare` is the inches of a distance without a unit.
 */
export const joined = (all: readonly Clause[], bare: number): readonly Clause[] => {
  const whole: Clause[] = [];
  for (const clause of all) {
    const before = whole.at(-1);
    const more = before === undefined ? null : goesOn(before, clause, bare);
    if (more === null) whole.push(clause);
    else whole.splice(-1, 1, more);
  }
  return whole;
};
