import { PDFDict, PDFName, type PDFDocument, type PDFRef } from 'pdf-lib';
import { layerNames, type LayerName } from '../../../drawing/layerNames.ts';
import { pdfText } from './pdfText.ts';
import { phrase } from '../../../phrases/phrase.ts';

/** What a reader's list of layers calls them. */
const titles: Readonly<Record<LayerName, string>> = {
  sheet: phrase`Sheet and tables`,
  yard: phrase`Yard`,
  fence: phrase`Fence`,
  dimensions: phrase`Dimensions`,
  names: phrase`Names and numbers`,
  flags: phrase`Flags`,
};

/**
 * Lets a reader turn layers of a PDF on and off, each once for all its pages; all are on at first. The pages
 * name their layers as `/OC /name BDC`.
 */
export const addLayers = (doc: PDFDocument, used: ReadonlySet<LayerName>): void => {
  const { catalog, context } = doc;
  const groups = layerNames
    .filter((layer) => used.has(layer))
    .map((layer): readonly [LayerName, PDFRef] => {
      const group = context.obj({ Type: 'OCG', Name: pdfText(titles[layer]) });
      return [layer, context.register(group)];
    });
  if (groups.length === 0) return;
  const refs = groups.map(([, ref]) => ref);
  const shown = { Name: pdfText(phrase`Layers`), BaseState: 'ON', ON: refs, Order: refs };
  catalog.set(PDFName.of('OCProperties'), context.obj({ OCGs: refs, D: shown }));
  const named = context.register(context.obj(Object.fromEntries(groups)));
  for (const page of doc.getPages()) {
    page.node.lookup(PDFName.of('Resources'), PDFDict).set(PDFName.of('Properties'), named);
  }
};
