import { toolbox } from '../../editor/toolbox.ts';
import { phrase, phraseOf } from '../../phrases/phrase.ts';

const tools = toolbox.map(({ key, label }) => [key.toUpperCase(), label.toLowerCase()] as const);

const keys = [
  [
    phrase`Arrows`,
    phrase`move the crosshair, or what is selected; a post is held where it is moved`,
  ],
  [phrase`Space`, phrase`sets a mark at the crosshair; held, drags the pad`],
  [phrase`Figures`, phrase`type the length of the piece being drawn`],
  [phrase`Enter`, phrase`ends the line`],
  [phrase`Backspace`, phrase`takes the last mark back`],
  [phrase`Escape`, phrase`leaves the tool, then lets the selection go; a held post stays held`],
  [phraseOf('key')`Delete`, phrase`erases what is selected; lets a held post go`],
  [phraseOf('key')`Shift`, phrase`held while drawing: no snapping`],
  ['+ − 0', phrase`larger, smaller, show all`],
  ['R', phrase`the yard as a list, with all that can be drawn`],
  [phrase`Ctrl-Z, Ctrl-Y`, phrase`undo, redo`],
] as const;

/** What the keys do in the yard. */
export const KeysHelp = () => (
  <details className="more keys">
    <summary>{phrase`Keys`}</summary>
    <dl>
      {[...keys, ...tools].map(([key, does]) => (
        <div key={key}>
          <dt>{key}</dt>
          <dd>{does}</dd>
        </div>
      ))}
    </dl>
  </details>
);
