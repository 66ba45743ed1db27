import { phrase } from '../../phrases/phrase.ts';
import type { SheetPages } from './useSheetPages.ts';

/** What is said of the pages that are shown while others are drawn. */
const meanwhile = phrase`The pages below are those before the last change.`;

/** How the drawing of the set stands: how far it is, with a key to stop it; or how many pages it has. */
export const SheetStanding = ({ set }: { readonly set: SheetPages }) => {
  const { stands, drawn, stop, again } = set;
  const old = drawn === null ? '' : ` ${meanwhile}`;
  if (stands.is === 'drawing') {
    const { done, of } = stands.progress ?? { done: 0, of: 1 };
    return (
      <div className="standing">
        <label>
          {phrase`Drawing the pages…`} <progress value={done} max={of} />
        </label>
        <button type="button" onClick={stop}>{phrase`Stop drawing`}</button>
        <p className="note">{old}</p>
      </div>
    );
  }
  if (stands.is === 'drawn') {
    const count = drawn?.pages.length ?? 0;
    return (
      <p className="note" aria-live="polite">
        {count === 1
          ? phrase`1 page, as they will be printed.`
          : phrase`${count} pages, as they will be printed.`}
      </p>
    );
  }
  const why =
    stands.is === 'stopped'
      ? phrase`Drawing was stopped.`
      : phrase`The pages could not be drawn: ${stands.why}.`;
  return (
    <div className="standing">
      <p className="note" role="status">
        {why}
        {old}
      </p>
      <button type="button" onClick={again}>{phrase`Draw the pages`}</button>
    </div>
  );
};
