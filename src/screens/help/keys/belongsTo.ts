const presses = /^(Enter| )$/;

/** Where undo and redo are those of what is typed, or wait for the sheet that is open. */
const ownCommands =
  'textarea, dialog, input:not([type="checkbox"], [type="radio"], [type="range"])';

/** Whether a key belongs to what has the focus, and not to the screen. */
export const belongsTo = (target: EventTarget | null, key: string, command: boolean): boolean => {
  if (!(target instanceof HTMLElement)) return false;
  if (command) return target.closest(ownCommands) !== null;
  if (target.closest('input, textarea, select, dialog, [role="region"]') !== null) return true;
  return presses.test(key) && target.closest('button, a, summary') !== null;
};
