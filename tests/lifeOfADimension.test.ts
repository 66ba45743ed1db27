import { describe, expect, it } from 'vitest';
import { sheetSet } from '../src/drawing/sheet/sheetSet.ts';
import { createSend } from '../src/editor/send.ts';
import { toolbox } from '../src/editor/toolbox.ts';
import { layOutFrom } from '../src/engine/layOutFrom.ts';
import { layOutSite } from '../src/engine/layOutSite.ts';
import { pdfInfoFor } from '../src/exporters/pdf/pdfInfoFor.ts';
import { toPdf } from '../src/exporters/pdf/toPdf.ts';
import { emptySite } from '../src/site/emptySite.ts';
import { saveSite } from '../src/site/saveSite.ts';
import { rememberLayouts } from '../src/store/derived.ts';
import { createSession } from '../src/store/session.ts';
import { createSiteStore } from '../src/store/siteStore.ts';
import { inches } from '../src/units/inches.ts';
import { startingPlans } from '../src/screens/plans/startingPlans.ts';
import { readPdf } from './exporters/pdf/readPdf.ts';
import { sheetFonts } from './exporters/pdf/sheetFonts.ts';

/** The hops of DEVELOPERS.md from the second on: hop 1 is a pointer, which `e2e/` presses. */
describe('the life of a dimension', () => {
  it('two presses and a typed length come out of the PDF as 12\'-6 1/2"', async () => {
    const site = createSiteStore(emptySite({ specs: {}, hardware: {} }));
    const session = createSession(startingPlans);
    session.setState({ tool: 'fence' });
    const { send } = createSend({
      site,
      session,
      layOut: rememberLayouts(layOutFrom),
      tools: toolbox,
    });
    const reach = inches(6);
    const press = (x: number, y: number): void => {
      send({ do: 'press', at: { x, y }, reach, free: true });
      send({ do: 'release', at: { x, y }, reach, free: true });
    };

    press(0, 0);
    send({ do: 'type', length: inches(150.5), bearing: null });
    press(300, 0);
    send({ do: 'finish' });

    const drawn = site.getState().history.present.site;
    const siteText = saveSite(drawn);
    const pages = sheetSet(drawn, layOutSite(drawn), { paper: 'letter', siteText });
    const set = { sort: 'Crew sheet', siteText, file: null } as const;
    const bytes = await toPdf(pages, sheetFonts, pdfInfoFor(drawn, set), null);
    const { pages: read } = await readPdf(bytes);
    expect(read[1]?.texts).toContain(`12'-6 1/2"`);

    const { undo } = site.getState();
    while (site.getState().history.past.length > 0) undo();
    expect(site.getState().history.present.site.marks).toEqual({});
  });
});
