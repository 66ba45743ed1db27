import { isLanguage } from '../phrases/languages.ts';
import { readCallsAtHand } from './callsAtHand.ts';
import { readCountingAtHand } from './countingAtHand.ts';
import { readPricesAtHand } from './pricesAtHand.ts';
import { screenNames, themes } from './session.ts';
import { sheetPapers, sheetReaders, sheetWays } from './sheetOptions.ts';
import type { Session } from './session.ts';
import { readTour } from './tour.ts';

/** The parts of a session that outlast it. */
export type KeptSession = Pick<
  Session,
  'screen' | 'theme' | 'view' | 'sheet' | 'calls' | 'prices' | 'counting' | 'tour'
>;

/** The parts of a session that are kept on the device. */
export const keptOf = ({
  screen,
  theme,
  view,
  sheet,
  calls,
  prices,
  counting,
  tour,
}: Session): KeptSession => ({
  screen,
  theme,
  view,
  sheet,
  calls,
  prices,
  counting,
  tour,
});

/** Whether something of a session was chosen anew that outlasts it; where the pad was moved to is no choice. */
export const isChosenAnew = (after: Session, before: Session): boolean => {
  const [{ view: _, ...now }, was] = [keptOf(after), keptOf(before)];
  return Object.entries(now).some(([key, value]) => was[key as keyof KeptSession] !== value);
};

const partOf = (value: unknown, key: string): unknown =>
  typeof value === 'object' && value !== null ? Reflect.get(value, key) : undefined;

const oneOf = <T>(choices: readonly T[], value: unknown): T | null =>
  choices.find((choice) => choice === value) ?? null;

const viewOf = (value: unknown): Session['view'] | null => {
  const [scale, x, y] = ['scale', 'x', 'y'].map((key) => partOf(value, key));
  if (typeof scale !== 'number' || typeof x !== 'number' || typeof y !== 'number') return null;
  if (![scale, x, y].every(Number.isFinite) || scale <= 0) return null;
  return { scale, x, y };
};

/**
 * What was kept, read part by part: a part that an older or newer program kept in another form is
 * left out, and the session starts with its own.
 */
export const readKept = (value: unknown): Partial<KeptSession> => {
  const screen = oneOf(screenNames, partOf(value, 'screen'));
  const theme = oneOf(themes, partOf(value, 'theme'));
  const view = viewOf(partOf(value, 'view'));
  const sheet = partOf(value, 'sheet');
  const paper = oneOf(sheetPapers, partOf(sheet, 'paper'));
  const calls = readCallsAtHand(partOf(value, 'calls'));
  const prices = readPricesAtHand(partOf(value, 'prices'));
  const counting = readCountingAtHand(partOf(value, 'counting'));
  const tour = readTour(partOf(value, 'tour'));
  const orientation = oneOf(sheetWays, partOf(sheet, 'orientation'));
  // sets were whole before there were others
  const reader = oneOf(sheetReaders, partOf(sheet, 'reader')) ?? 'all';
  const told = partOf(sheet, 'language');
  const language = isLanguage(told) ? told : null;
  return {
    ...(screen !== null && { screen }),
    ...(theme !== null && { theme }),
    ...(view !== null && { view }),
    ...(calls !== null && { calls }),
    ...(prices !== null && { prices }),
    ...(counting !== null && { counting }),
    ...(tour !== null && { tour }),
    ...(paper !== null &&
      orientation !== null && {
        sheet: { paper, orientation, reader, language },
      }),
  };
};
