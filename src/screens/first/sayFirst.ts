/** What is said before the program is there, and the key with which to do something about it. */
interface Said {
  readonly line: string;
  readonly key?: { readonly label: string; readonly onPress: () => void };
}

const place = 'first-said';

/** Says one line over the page, in the place of what was said before; null takes it away. */
export const sayFirst = (said: Said | null): void => {
  document.querySelector(`.${place}`)?.remove();
  if (said === null) return;
  const box = document.createElement('div');
  box.className = place;
  box.role = said.key === undefined ? 'status' : 'alert';
  const line = document.createElement('p');
  line.textContent = said.line;
  box.append(line);
  if (said.key !== undefined) {
    const key = document.createElement('button');
    key.type = 'button';
    key.textContent = said.key.label;
    key.addEventListener('click', said.key.onPress);
    box.append(key);
  }
  document.body.append(box);
};
