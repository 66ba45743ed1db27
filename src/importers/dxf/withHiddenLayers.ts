import type { Dxf } from 'dxf';
import type { Found } from '../../site/found.ts';
import { labelText } from '../labelText.ts';
import { phrase } from '../../phrases/phrase.ts';

/** Layers that are told one by one. */
const mostTold = 8;
/** The letters of a name that are told. */
const longest = 24;

/** Layers that are off (a colour below 0) or frozen (the first flag), in capitals; public DXF reference. */
const hiddenIn = ({ tables }: Dxf): ReadonlySet<string> =>
  new Set(
    Object.values(tables?.layers ?? {})
      .filter(({ flags = 0, colorNumber = 0 }) => (flags & 1) === 1 || colorNumber < 0)
      .map(({ name = '' }) => labelText(name).toUpperCase()),
  );

/** What was found with the groups of layers that nobody sees in the file marked, and told. */
export const withHiddenLayers = (found: Found, dxf: Dxf): Found => {
  const hidden = hiddenIn(dxf);
  const isHidden = (layer: string) => hidden.has(layer.toUpperCase());
  const layers = [...new Set(found.groups.map(({ layer }) => layer))].filter(isHidden);
  if (layers.length === 0) return found;
  const list = layers
    .slice(0, mostTold)
    .map((layer) => (layer.length > longest ? `${layer.slice(0, longest - 1)}…` : layer))
    .join(', ');
  const all =
    layers.length > mostTold ? phrase`${list} and ${layers.length - mostTold} more` : list;
  return {
    ...found,
    groups: found.groups.map((group) =>
      isHidden(group.layer) ? { ...group, hidden: true } : group,
    ),
    told: [...found.told, phrase`Off or frozen in the file, so left out unless chosen: ${all}`],
  };
};
