import type { Source } from '../../../trade/source.ts';
import { phrase } from '../../../phrases/phrase.ts';

/** One published figure: as it is written, and where it is published. */
export interface PublishedFigure {
  readonly text: string;
  readonly source: Source;
  /** Whether the build has this figure. */
  readonly used: boolean;
  readonly onTake: () => void;
}

interface Props {
  /** What the figures are of, such as `corner angle`. */
  readonly of: string;
  readonly figures: readonly PublishedFigure[];
  /** What is published without a figure. */
  readonly besides?: string;
  /** Whether the figures are of one thing, on which sources disagree, or rows of a table. */
  readonly as?: 'figures' | 'rows';
}

const hints = {
  figures: phrase`The sources disagree. Tap a figure to take it.`,
  rows: phrase`Tap a row to take it.`,
} as const;

/** What is published for one rule of the build; a tap takes it. */
export const Published = ({ of, figures, besides, as = 'figures' }: Props) => (
  <details className="more">
    <summary>{phrase`What is published: ${of}`}</summary>
    <div className="stack">
      {figures.length > 1 && <p className="note">{hints[as]}</p>}
      {figures.map(({ text, source, used, onTake }) => (
        <button
          key={`${text} ${source.text}`}
          type="button"
          className="published"
          aria-pressed={used}
          onClick={onTake}
        >
          <b>{text}</b> {source.text}
        </button>
      ))}
      {besides !== undefined && <p className="note">{besides}</p>}
    </div>
  </details>
);
