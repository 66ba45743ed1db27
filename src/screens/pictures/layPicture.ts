import { phrase } from '../../phrases/phrase.ts';
import { addUnderlay } from '../../site/edits/addUnderlay.ts';
import { keepUnderlay } from '../../site/edits/keepUnderlay.ts';
import type { PictureId, UnderlayId } from '../../site/ids.ts';
import { nextId } from '../../site/nextId.ts';
import type { Site } from '../../site/site.ts';
import { pictureOf } from '../../store/pictureBytes.ts';
import { attempt } from '../attempt.ts';
import type { Bench } from '../bench.ts';
import { firstTies } from './firstTies.ts';
import type { Taken } from './pictureCall.ts';

/** A picture that was taken from a file of some name, and what it will be called. */
export interface Named {
  readonly file: string;
  readonly label: string;
  readonly taken: Taken;
  /** What else is to be said of the file. */
  readonly note?: string;
}

/** A label of the document has 200 characters at most. */
const short = (text: string): string => text.slice(0, 200);

const showing = (site: Site, id: PictureId): UnderlayId[] =>
  (Object.keys(site.underlays) as UnderlayId[]).filter(
    (one) => site.underlays[one]?.picture === id,
  );

/** Takes the picture tool in hand, with a picture selected, on the screen where it can be seen. */
const takeInHand = ({ session }: Bench, id: UnderlayId): void => {
  window.location.hash = '#yard';
  session.setState({ screen: 'yard', tool: 'picture', selection: { kind: 'underlay', id } });
};

/** Adds it, in the file where it is not too large for that; the line that says where it is kept then. */
const added = async (
  bench: Bench,
  { file, label, taken }: Named,
): Promise<{ readonly fault: string | null; readonly beside: string }> => {
  const { site, session, pad } = bench;
  const { id: picture, width, height, kept } = taken;
  const bytes = await pictureOf(kept);
  const id = nextId(site.getState().history.present.site, 'underlay');
  const ties = firstTies(taken, session.getState().view, pad.getState());
  const laid = { label: short(label), file: short(file), picture, width, height, ties };
  let beside = '';
  const fault = attempt(bench, {
    label: phrase`Bring in picture`,
    on: (was) => {
      const bare = addUnderlay(was, laid);
      if (bytes === null) return bare;
      try {
        return keepUnderlay(bare, id, bytes);
      } catch (error) {
        if (!(error instanceof RangeError)) throw error;
        beside = phrase`${error.message}; it is kept on this device, beside the file`;
        return bare;
      }
    },
  });
  if (fault === null) takeInHand(bench, id);
  return { fault, beside };
};

/**
 * Lays a picture that was taken from a file under the drawing; one that is missed there is back, and one
 * that lies there already is selected.
 */
export const layPicture = async (bench: Bench, named: Named): Promise<void> => {
  const { site, session, pictures } = bench;
  const { file, taken, note = '' } = named;
  const say = (line: string) => session.setState({ say: `${file}: ${line}` });
  const [there] = showing(site.getState().history.present.site, taken.id);
  const missed = there !== undefined && pictures.shown.getState().get(there)?.shown.is !== 'here';
  const unkept = await pictures.put(taken.id, taken.kept);
  if (there !== undefined) {
    takeInHand(bench, there);
    say(missed ? phrase`back under the drawing` : phrase`it lies under the drawing already`);
    return;
  }
  const { fault, beside } = await added(bench, named);
  if (fault !== null) return say(phrase`${fault}; the drawing is as it was`);
  const lines = [beside, unkept ?? ''].filter((line) => line !== '');
  const told = note === '' ? lines : [...lines, note];
  if (lines.length > 0) return say(told.join('; '));
  say(
    note === ''
      ? phrase`under the drawing. Say how large it is by two points`
      : phrase`under the drawing; ${note}. Say how large it is by two points`,
  );
};
