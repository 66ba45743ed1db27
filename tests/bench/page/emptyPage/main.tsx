import { useEffect } from 'react';
import { createRoot } from 'react-dom/client';
import { painted } from '../../../../src/canvas/painted.ts';

const Empty = () => {
  useEffect(() => void painted().then(() => performance.mark('page painted')), []);
  return <div />;
};

const app = document.getElementById('app');
if (app === null) throw new Error('expected an element #app on the page');
createRoot(app).render(<Empty />);
