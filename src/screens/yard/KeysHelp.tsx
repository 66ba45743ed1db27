const keys = [
  ['Arrows', 'move the crosshair, or what is selected'],
  ['Space', 'sets a mark at the crosshair; held, drags the pad'],
  ['Figures', 'type the length of the piece being drawn'],
  ['Enter', 'ends the line'],
  ['Backspace', 'takes the last mark back'],
  ['Escape', 'leaves the tool'],
  ['Shift', 'held while drawing: no snapping'],
  ['+ − 0', 'larger, smaller, show all'],
  ['Ctrl-Z, Ctrl-Y', 'undo, redo'],
] as const;

/** What the keys do in the yard. */
export const KeysHelp = () => (
  <details className="more keys">
    <summary>Keys</summary>
    <dl>
      {keys.map(([key, does]) => (
        <div key={key}>
          <dt>{key}</dt>
          <dd>{does}</dd>
        </div>
      ))}
    </dl>
  </details>
);
