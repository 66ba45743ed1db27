import type { GateLayout, Layout } from '../../../engine/layout.ts';
import type { Site } from '../../../site/site.ts';
import { weakestSoil } from '../../../trade/soils.ts';
import { bracingTexts } from '../../tables/bracingTexts.ts';
import { gateTitle } from '../../tables/gateKind.ts';
import { leafLoadTexts } from '../../tables/leafLoadTexts.ts';
import { structureTable } from '../../tables/structureTable.ts';
import type { Stack } from '../flow/block.ts';
import { heading } from '../flow/heading.ts';
import { layTable } from '../flow/layTable.ts';
import { loose } from '../flow/stacks.ts';
import { unbroken } from '../flow/unbroken.ts';
import { phrase } from '../../../phrases/phrase.ts';

const soilWords = {
  bedrock: phrase`bedrock`,
  'soft rock': phrase`soft rock`,
  gravel: phrase`gravel`,
  sand: phrase`sand`,
  clay: phrase`clay`,
} as const;

const groundText = ({ soil, isolated }: Site['conditions']): string =>
  `${soil === null ? phrase`Ground: nobody has said; counted as ${weakestSoil.label}` : phrase`Ground: ${soilWords[soil]}, as told`}${isolated ? phrase`, in wind twice its lateral figures since half an inch of movement does no harm` : ''} (${weakestSoil.source.text}).`;

/** What leaves weigh and how far their posts give, gate by gate. */
const leafTexts = (site: Site, layout: Layout): string[] =>
  Object.values<GateLayout>(layout.gates).flatMap((gate) => {
    const texts = leafLoadTexts(site, gate, layout);
    return texts.length === 0 ? [] : [`${gateTitle(gate, site)}: ${texts.join(' ')}`];
  });

const disclaimer = phrase`These figures compare the plan with the rules named. They are no design: wind, soil and frost of this place are for its building department and a licensed professional to say.`;

/**
 * What wind, frost and ground ask of the posts beside what is planned, where somebody has told of any, what
 * leaves do to their posts, and how terminals are braced. It compares, and says so. Nothing without a fence.
 */
export const structureSection = (site: Site, layout: Layout, width: number): Stack[] => {
  const table = structureTable(site, layout);
  const leaves = leafTexts(site, layout);
  const told = table.rows.length > 0;
  const braces = bracingTexts(site, layout);
  if (!told && leaves.length === 0 && braces.length === 0) return [];
  const texts = [...leaves, ...braces, ...(told ? [groundText(site.conditions), disclaimer] : [])];
  const said = texts.flatMap((text) => unbroken(text, width));
  const head = loose(heading(phrase`Structure`, width), said, 0.3);
  return told ? [head, layTable(table, width)] : [head];
};
