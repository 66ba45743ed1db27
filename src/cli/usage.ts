import type { Option } from './option.ts';
import type { Verb } from './verb.ts';

const optionText = ({ name, value, needed, repeats }: Option): string => {
  const text = `--${name}${value === null ? '' : ` ${value}`}${repeats ? ' …' : ''}`;
  return needed ? text : `[${text}]`;
};

/** How a verb is called, in one line: `lath spacing --length L --max L [--json]`. */
export const usage = ({ name, places, options }: Omit<Verb, 'run' | 'does'>): string =>
  ['lath', name, ...places, ...options.map(optionText), '[--json]'].join(' ');
