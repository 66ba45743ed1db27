import { Component, type ContextType, type ReactNode } from 'react';
import { phrase } from '../../phrases/phrase.ts';
import { BenchContext } from '../bench.ts';
import { saveFile } from '../files/saveFile.ts';

interface Props {
  readonly children: ReactNode;
}

interface State {
  /** What went wrong, in one line; null while all is well. */
  readonly fault: string | null;
}

const lineOf = (error: unknown): string =>
  (error instanceof Error ? error.message : String(error)).split('\n')[0] ?? '';

/**
 * Keeps the program standing when a screen cannot be shown: the drawing is untouched and can be
 * saved, undone, or looked at on another screen. Give each screen a key of its own.
 */
export class Mishap extends Component<Props, State> {
  static override contextType = BenchContext;
  declare context: ContextType<typeof BenchContext>;
  override state: State = { fault: null };

  static getDerivedStateFromError(error: unknown): State {
    return { fault: lineOf(error) };
  }

  override render(): ReactNode {
    const { fault } = this.state;
    const bench = this.context;
    if (fault === null) return this.props.children;
    return (
      <section className="page" role="alert">
        <h2>{phrase`This screen cannot be shown`}</h2>
        <p>{fault}</p>
        <p>{phrase`Nothing of the drawing is lost. Save it, or undo the last step and try again.`}</p>
        <div className="choices">
          <button
            type="button"
            onClick={() => this.setState({ fault: null })}
          >{phrase`Try again`}</button>
          {bench !== null && (
            <button type="button" onClick={() => void saveFile(bench)}>{phrase`Save file`}</button>
          )}
        </div>
      </section>
    );
  }
}
