import '@fontsource/barlow/latin-400.css';
import '@fontsource/barlow/latin-500.css';
import '@fontsource/barlow/latin-600.css';
import '@fontsource/barlow/latin-700.css';
import './theme.css';
import './frame/frame.css';
import './fields/fields.css';
import './page.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './App.tsx';
import { BenchContext } from './bench.ts';
import { start } from './start.ts';

const app = document.getElementById('app');
if (app === null) throw new Error('expected an element #app on the page');
const bench = await start();
createRoot(app).render(
  <StrictMode>
    <BenchContext value={bench}>
      <App />
    </BenchContext>
  </StrictMode>,
);
