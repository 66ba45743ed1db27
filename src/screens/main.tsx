import '@fontsource/barlow/latin-400.css';
import '@fontsource/barlow/latin-500.css';
import '@fontsource/barlow/latin-600.css';
import '@fontsource/barlow/latin-700.css';
import './theme.css';
import './frame.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './App.tsx';

const app = document.getElementById('app');
if (app === null) throw new Error('expected an element #app on the page');
createRoot(app).render(
  <StrictMode>
    <App />
  </StrictMode>,
);
