import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './App.tsx';
import { BenchContext } from './bench.ts';
import { FirstAway } from './first/FirstAway.tsx';
import type { Opened } from './first/openFirst.ts';
import { start } from './start.ts';

/** Shows the program on the page, as it opens. */
export const show = async (opened: Opened): Promise<void> => {
  const app = document.getElementById('app');
  if (app === null) throw new Error('expected an element #app on the page');
  const bench = await start(opened);
  createRoot(app).render(
    <StrictMode>
      <BenchContext value={bench}>
        <App />
        <FirstAway />
      </BenchContext>
    </StrictMode>,
  );
};
