/** What answers a request: the page, the bare address, a part of the program; null for the network. */
export type Answers = 'page' | 'bare' | 'part' | null;

/**
 * What answers a request from what is kept. Only what is read from the program's own folder is; `scope`
 * is the address of that folder with its closing slash.
 */
export const answersFor = (
  { url, method, mode }: Pick<Request, 'url' | 'method' | 'mode'>,
  scope: string,
): Answers => {
  if (method !== 'GET' || !url.startsWith(scope)) return null;
  if (mode !== 'navigate') return 'part';
  const [address = '', query] = (url.slice(scope.length).split('#')[0] ?? '').split('?');
  if (address === '') return query === undefined ? 'bare' : 'page';
  return address === 'index.html' ? 'page' : null;
};
