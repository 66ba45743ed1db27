import { parseArgs } from 'node:util';
import { read, unread, type Parsed } from '../units/parsed.ts';
import { quotedText } from '../units/quotedText.ts';
import type { Call } from './call.ts';
import type { Verb } from './verb.ts';
import { phrase } from '../phrases/phrase.ts';

/** Switches that every verb takes. */
const everywhere = ['json', 'help'];

interface OptionToken {
  readonly name: string;
  readonly rawName: string;
  readonly value: string | undefined;
}

type Shape = Omit<Verb, 'run' | 'does'>;

/** What a shell leaves of `54' --max 10'` when the foot marks are not quoted. */
const eaten = / --[a-z]/;

/** A place in brackets may be left out. */
const isNeeded = (place: string): boolean => !place.startsWith('[');

/** Whether the last place takes any number of words. */
const isOpen = ({ places }: Shape): boolean => places.at(-1)?.includes('…') ?? false;

const listed = (names: readonly string[]): string => names.map((name) => `--${name}`).join(' ');

/** Why a value cannot stand after an option; null where it can. */
const badValue = (shape: Shape, { name, rawName, value }: OptionToken): string | null => {
  if (everywhere.includes(name)) {
    return value === undefined ? null : phrase`lath ${shape.name}: --${name} takes no value`;
  }
  const option = shape.options.find((one) => one.name === name);
  if (option === undefined) {
    const known = [...shape.options.map((one) => one.name), ...everywhere];
    return phrase`lath ${shape.name}: there is no option ${quotedText(rawName)}: expected one of ${listed(known)}`;
  }
  if (option.value === null) {
    return value === undefined ? null : phrase`lath ${shape.name}: --${name} takes no value`;
  }
  if (value !== undefined && eaten.test(value)) {
    return phrase`lath ${shape.name}: --${name} ${quotedText(value)} is two options in one: the shell took the foot marks for quotes; expected 54ft or "54'"`;
  }
  if (value !== undefined && value !== '' && !value.startsWith('--')) return null;
  return phrase`lath ${shape.name}: --${name} has no value: expected --${name} ${option.value}`;
};

const missing = (shape: Shape, call: Call): string | null => {
  const option = shape.options.find(({ name, needed }) => needed && !call.values.has(name));
  if (call.values.has('help')) return null;
  const place = shape.places.find((_, n) => (call.places[n] ?? '') === '');
  if (place !== undefined && isNeeded(place)) {
    return phrase`lath ${shape.name}: ${place} is missing: expected lath ${shape.name} ${shape.places.join(' ')}`;
  }
  if (option === undefined) return null;
  return phrase`lath ${shape.name}: --${option.name} is missing: expected --${option.name} ${option.value ?? ''}`;
};

const repeated = (shape: Shape, call: Call): string | null => {
  const option = shape.options.find(
    ({ name, repeats }) => !repeats && (call.values.get(name)?.length ?? 0) > 1,
  );
  if (option === undefined) return null;
  return phrase`lath ${shape.name}: --${option.name} is given twice: expected it once`;
};

const tokensOf = (shape: Shape, args: readonly string[]) =>
  parseArgs({
    args: [...args],
    strict: false,
    tokens: true,
    allowPositionals: true,
    options: Object.fromEntries([
      ...shape.options.map(({ name, value }) => [
        name,
        { type: value === null ? ('boolean' as const) : ('string' as const) },
      ]),
      ['json', { type: 'boolean' as const }],
      ['help', { type: 'boolean' as const, short: 'h' }],
    ]),
  }).tokens;

/**
 * Reads what stands after a verb. Options may stand anywhere, as `--name value` or `--name=value`;
 * after `--` everything is a place; `-` alone is a place. What is unknown, missing, given twice or
 * left without a value gets one line.
 */
export const readCall = (shape: Shape, args: readonly string[]): Parsed<Call> => {
  const places: string[] = [];
  const values = new Map<string, string[]>();
  for (const token of tokensOf(shape, args)) {
    if (token.kind === 'positional') {
      if (places.length >= shape.places.length && !isOpen(shape)) {
        return unread(
          phrase`lath ${shape.name}: ${quotedText(token.value)} is one word too many: expected ${shape.places.join(' ') || phrase`options only`}`,
        );
      }
      places.push(token.value);
    }
    if (token.kind !== 'option') continue;
    const bad = badValue(shape, token);
    if (bad !== null) return unread(bad);
    values.set(token.name, [...(values.get(token.name) ?? []), token.value ?? '']);
  }
  const call = { places, values };
  const fault = repeated(shape, call) ?? missing(shape, call);
  return fault === null ? read(call) : unread(fault);
};
