import canvas from './es/canvas.json' with { type: 'json' };
import cli from './es/cli.json' with { type: 'json' };
import drawing from './es/drawing.json' with { type: 'json' };
import editor from './es/editor.json' with { type: 'json' };
import engine from './es/engine.json' with { type: 'json' };
import exporters from './es/exporters.json' with { type: 'json' };
import geometry from './es/geometry.json' with { type: 'json' };
import importers from './es/importers.json' with { type: 'json' };
import screens from './es/screens.json' with { type: 'json' };
import site from './es/site.json' with { type: 'json' };
import store from './es/store.json' with { type: 'json' };
import trade from './es/trade.json' with { type: 'json' };
import units from './es/units.json' with { type: 'json' };

/** The Spanish of the program, as it is spoken on sites in the United States and Mexico. */
export const spanish: Readonly<Record<string, string>> = {
  ...units,
  ...geometry,
  ...site,
  ...trade,
  ...engine,
  ...drawing,
  ...exporters,
  ...importers,
  ...store,
  ...editor,
  ...canvas,
  ...screens,
  ...cli,
};
