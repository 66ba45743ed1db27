import { toolbox } from '../../editor/toolbox.ts';

const tools = toolbox.map(({ key, label }) => [key.toUpperCase(), label.toLowerCase()] as const);

const keys = [
  ['Arrows', 'move the crosshair, or what is selected; a post is held where it is moved'],
  ['Space', 'sets a mark at the crosshair; held, drags the pad'],
  ['Figures', 'type the length of the piece being drawn'],
  ['Enter', 'ends the line'],
  ['Backspace', 'takes the last mark back'],
  ['Escape', 'leaves the tool, then lets the selection go; a held post stays held'],
  ['Delete', 'erases what is selected; lets a held post go'],
  ['Shift', 'held while drawing: no snapping'],
  ['+ − 0', 'larger, smaller, show all'],
  ['R', 'the yard as a list, with all that can be drawn'],
  ['Ctrl-Z, Ctrl-Y', 'undo, redo'],
] as const;

/** What the keys do in the yard. */
export const KeysHelp = () => (
  <details className="more keys">
    <summary>Keys</summary>
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
