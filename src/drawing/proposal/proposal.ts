import type { Layout } from '../../engine/layout.ts';
import type { CustomerPrices } from '../../engine/compare/customerPrices.ts';
import { checkValue } from '../../site/checkValue.ts';
import type { Site } from '../../site/site.ts';
import { customerCautions } from '../../trade/customerCautions.ts';
import type { Atom } from '../atom.ts';
import { rectangleOutline } from '../explode/polylineOutline.ts';
import { pens } from '../pens.ts';
import { printable } from '../printable.ts';
import { shorten } from '../shorten.ts';
import type { Block } from '../sheet/flow/block.ts';
import { handRow } from '../sheet/flow/handRow.ts';
import { subheading } from '../sheet/flow/heading.ts';
import { paragraph } from '../sheet/flow/paragraph.ts';
import { putBlock } from '../sheet/flow/putBlock.ts';
import { stackBlocks } from '../sheet/flow/stackBlocks.ts';
import { letters } from '../sheet/letters.ts';
import { lineOfText } from '../sheet/lineOfText.ts';
import type { Page } from '../sheet/page.ts';
import { pageAtoms } from '../sheet/pageAtoms.ts';
import { laid } from '../sheet/papers.ts';
import { planFoot, scaledPlan } from '../sheet/plan/scaledPlan.ts';
import { inset, type Rect } from '../sheet/rect.ts';
import { sheetFrame } from '../sheet/sheetFrame.ts';
import type { SheetOptions } from '../sheet/sheetOptions.ts';
import { textWidth } from '../textWidth.ts';
import { customerKey } from './customerKey.ts';
import { customerPlan } from './customerPlan.ts';
import { includedBlock } from './includedBlock.ts';
import { includedRows } from './includedRows.ts';
import { priceBlock } from './priceBlock.ts';
import { proposalHead } from './proposalHead.ts';
import { phrase } from '../../phrases/phrase.ts';
import { language } from '../../phrases/speak.ts';

/** Clear inside the frame, and between what stands side by side or one over the other; paper inches. */
const inside = 0.16;
const gutter = 0.35;
const space = 0.14;
/** Room round the ground for the lengths beside it, and over and under the key. */
const forLengths = 0.45;
const beforeKey = 0.05;
/** The least field of the bar scale, so that words have room beside it. */
const leastField = 0.3;
/** The plan has at least this share of what is not taken by words that every page has. */
const leastPlan = 0.5;
/** Of upright paper what is included has so much of the width; of wide paper the words, and no more inches. */
const shares = { included: 0.64, words: 0.38 } as const;
const mostWords = 5;
/** On wide paper the price leaves room for what is included. */
const mostPrice = 0.6;
/** A row to sign on is no longer, paper inches. */
const mostSign = 10;

/** How a proposal is laid out; upright unless said. */
export interface ProposalOptions extends Omit<SheetOptions, 'reader'> {
  readonly prices: Pick<CustomerPrices, 'price' | 'others'>;
}

const rule = phrase`Lengths are from end to end, gates included.`;

/** Names as far as a line holds them, and how many more there are. */
const namesThatFit = (names: readonly string[], room: number): string => {
  const says = (count: number): string => {
    const more = names.length - count;
    if (count === 0) return phrase`No room on the plan for ${more} of its names and lengths`;
    const own = names.slice(0, count).map((name) => name.replace(/\s+/g, ' '));
    return phrase`No room on the plan for ${[...own, ...(more > 0 ? [phrase`${more} more`] : [])].join('; ')}`;
  };
  let count = names.length;
  while (count > 0 && textWidth(printable(says(count)), letters.small, 'regular') > room)
    count -= 1;
  return says(count);
};

/** One line in the ink of a stop while the plan cannot be built as it is; nothing else. */
const notFinal = ({ flags }: Layout, width: number): Block => {
  const stops = flags.filter(({ level }) => level === 'stop').length;
  if (stops === 0) return { height: 0, atoms: [] };
  const text =
    stops === 1
      ? phrase`Not final: one thing on this plan must be put right before it can be built.`
      : phrase`Not final: ${stops} things on this plan must be put right before it can be built.`;
  const size = letters.strong;
  const cut = shorten(printable(text), width, size, 'bold');
  return { height: 0.3, atoms: lineOfText(cut, 0, 0.1, { size, weight: 'bold', ink: 'stop' }) };
};

/** Who marks buried lines, where the lot ends, whose rules come first; then room to sign. */
const foot = (width: number): Block =>
  stackBlocks([
    subheading(phrase`Please note`, width),
    ...paragraph(customerCautions.join(' '), width),
    { height: 0.26, atoms: [] },
    handRow(
      [
        { label: phrase`Valid until`, hand: 0.9, known: '' },
        { label: phrase`Accepted, signature`, hand: 2, known: '' },
        { label: phrase`Date`, hand: 0.9, known: '' },
      ],
      Math.min(width, mostSign),
    ),
  ]);

interface Words {
  readonly site: Site;
  readonly layout: Layout;
  readonly prices: ProposalOptions['prices'];
}

const plan = ({ site, layout }: Words, room: Rect): readonly Atom[] => {
  const key = customerKey(site, room.width);
  const under = key.height + 2 * beforeKey;
  const place = {
    drawn: [{ name: 'sheet', primitives: customerPlan(site, layout) }] as const,
    system: site.lengths.system,
    window: { ...room, height: room.height - planFoot - under },
    clear: forLengths,
    leastField,
  };
  const { layers } = scaledPlan(place, (width, left) =>
    left.length === 0 ? [rule] : [rule, namesThatFit(left, width)],
  );
  return [
    ...pageAtoms({ layers }),
    ...putBlock(key, { x: room.x, y: room.y + room.height - key.height - beforeKey }),
  ];
};

/** The plan over what is included and the price, which stand side by side. */
const upright = (words: Words, room: Rect): Atom[] => {
  const { site, layout, prices } = words;
  const left = shares.included * (room.width - gutter);
  const most = (1 - leastPlan) * room.height - space;
  const cost = priceBlock(prices, room.width - gutter - left, most);
  const included = includedBlock(includedRows(site, layout), left, most);
  const height = Math.max(cost.height, included.height);
  const y = room.y + room.height - height;
  return [
    ...plan(words, { ...room, height: room.height - height - space }),
    ...putBlock(included, { x: room.x, y }),
    ...putBlock(cost, { x: room.x + left + gutter, y }),
  ];
};

/** The plan beside what is included and the price, which stand one over the other. */
const wide = (words: Words, room: Rect): Atom[] => {
  const { site, layout, prices } = words;
  const width = Math.min(mostWords, shares.words * (room.width - gutter));
  const drawn = room.width - gutter - width;
  const x = room.x + drawn + gutter;
  const cost = priceBlock(prices, width, mostPrice * room.height);
  const most = room.height - cost.height - space;
  const included = includedBlock(includedRows(site, layout), width, most);
  return [
    ...plan(words, { ...room, width: drawn }),
    ...putBlock(included, { x, y: room.y }),
    ...putBlock(cost, { x, y: room.y + included.height + space }),
  ];
};

/**
 * The proposal for a customer, one page whatever the site: heading, plan, what is included in plain words,
 * the price without what it is made up of, cautions, and room to sign. It carries nothing of the crew's
 * and says in one line where the plan cannot be built yet.
 */
export const proposal = (site: Site, layout: Layout, options: ProposalOptions): Page => {
  const { paper: size, orientation = 'portrait', siteText, prices } = options;
  const paper = laid(size, orientation);
  const { outer } = sheetFrame(paper);
  const head = proposalHead(site, checkValue(siteText), outer.width);
  const content = inset(
    { ...outer, y: outer.y + head.height, height: outer.height - head.height },
    inside,
  );
  const warned = notFinal(layout, content.width);
  const end = foot(content.width);
  const room: Rect = {
    ...content,
    y: content.y + warned.height,
    height: content.height - warned.height - end.height - space,
  };
  const words = { site, layout, prices };
  return {
    title: phrase`Proposal`,
    paper,
    layers: [
      {
        name: 'sheet',
        atoms: [
          {
            do: 'stroke',
            pen: pens.frame,
            outline: rectangleOutline(outer, outer.width, outer.height),
          },
          ...putBlock(head, outer),
          ...putBlock(warned, content),
          ...(orientation === 'portrait' ? upright(words, room) : wide(words, room)),
          ...putBlock(end, { x: content.x, y: content.y + content.height - end.height }),
        ],
      },
    ],
    links: [],
    language: language(),
  };
};
