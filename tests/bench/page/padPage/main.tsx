import '@fontsource/barlow/latin-400.css';
import '@fontsource/barlow/latin-500.css';
import '@fontsource/barlow/latin-600.css';
import '@fontsource/barlow/latin-700.css';
import '../../../../src/screens/theme.css';
import '../../../../src/screens/frame/frame.css';
import '../../../../src/screens/fields/fields.css';
import '../../../../src/screens/page.css';
import { createRoot } from 'react-dom/client';
import { panBy, toScreen, zoomAt } from '../../../../src/editor/view.ts';
import { App } from '../../../../src/screens/App.tsx';
import { BenchContext } from '../../../../src/screens/bench.ts';
import { fitAll } from '../../../../src/screens/fitAll.ts';
import { openedYard } from '../../../../src/screens/first/openedYard.ts';
import { start } from '../../../../src/screens/start.ts';
import { planOf } from '../../../../src/screens/yard/planOf.ts';
import { deviceJobShelf } from '../../../../src/store/deviceJobShelf.ts';
import { current } from '../../../../src/store/history.ts';
import { yardOf } from '../../yardOf.ts';
import { plainCanvas, sceneOf } from './plainCanvas.ts';
import { typedBytes } from './typedBytes.ts';

const bench = await start({ ...(await openedYard(deviceJobShelf())), look: null });
const app = document.getElementById('app');
if (app === null) throw new Error('expected an element #app on the page');
createRoot(app).render(
  <BenchContext value={bench}>
    <App />
  </BenchContext>,
);

const padOf = (): Element => {
  const pad = document.querySelector('.pad');
  if (pad === null) throw new Error('expected a pad');
  return pad;
};

const shown = () => {
  const site = current(bench.site.getState().history);
  return { site, layout: bench.layOut(site) };
};

const scene = () => {
  const { site, layout } = shown();
  const { width, height } = padOf().getBoundingClientRect();
  const { view } = bench.session.getState();
  return sceneOf(planOf(site, layout).flat(), view, { width, height });
};

let plain: ReturnType<typeof plainCanvas> | null = null;

window.timedPad = {
  load: async (posts) => {
    await document.fonts.ready;
    bench.site.getState().load(yardOf(posts), 'timed');
    fitAll(bench);
    return shown().layout.posts.size;
  },
  middle: () => {
    const { x, y, width, height } = padOf().getBoundingClientRect();
    return { x: x + width / 2, y: y + height / 2 };
  },
  gate: (line) => {
    const gate = shown().layout.gates[`gate:long-${line}`];
    if (gate === undefined) throw new Error(`expected a gate on line ${line}`);
    const { x, y } = padOf().getBoundingClientRect();
    const at = toScreen(bench.session.getState().view, gate.middle);
    return { x: x + at.x, y: y + at.y };
  },
  move: ({ x, y, times }) => {
    const { width, height } = padOf().getBoundingClientRect();
    const about = { x: width / 2, y: height / 2 };
    bench.session.setState(({ view }) => ({
      view: panBy(times === 1 ? view : zoomAt(view, about, times), { x, y }),
    }));
  },
  plain: (is) => {
    plain?.remove();
    plain = is === 'there' ? plainCanvas(padOf(), scene(), bench.session.getState().view) : null;
  },
  paintPlain: () => plain?.paint(),
  typedBytes: () => typedBytes(scene()),
};
