import type { Site } from '../../site/site.ts';
import { circleOutline } from '../explode/polylineOutline.ts';
import type { Block } from '../sheet/flow/block.ts';
import { fenceKey } from '../sheet/plan/fenceKey.ts';
import { groundKey } from '../sheet/plan/groundKey.ts';
import { keyRows } from '../sheet/plan/keyRows.ts';
import { lineSign, signWidth, type KeyEntry } from '../sheet/plan/keySigns.ts';
import { utilityKey } from '../sheet/plan/utilityKey.ts';
import { customerSite } from './customerSite.ts';
import { phrase } from '../../phrases/phrase.ts';

const post: KeyEntry = {
  sign: [
    {
      do: 'fill',
      ink: 'post',
      opacity: 1,
      outline: circleOutline({ x: signWidth / 2, y: 0 }, 0.034),
    },
  ],
  text: phrase`post`,
};

/** Gates by the way they open, as the plan shows them. */
const gateKey = ({ gates }: Pick<Site, 'gates'>): KeyEntry[] => {
  const ways = new Set(Object.values(gates).map(({ way }) => way.kind));
  return [
    ...(ways.has('swing') || ways.has('centre stop')
      ? [{ sign: lineSign('leaf'), text: phrase`gate, open` }]
      : []),
    ...(ways.has('cantilever')
      ? [
          { sign: lineSign('leaf'), text: phrase`gate that rolls, closed` },
          { sign: lineSign('swing'), text: phrase`rolled aside` },
        ]
      : []),
  ];
};

/** What the signs of a customer's plan stand for, in rows across `width`, paper inches; only what the site has. */
export const customerKey = (site: Site, width: number): Block =>
  keyRows(
    [
      ...fenceKey(site),
      post,
      ...gateKey(site),
      ...groundKey(customerSite(site)),
      // the code that colours are of is for who marks the ground
      ...utilityKey(site).filter(({ sign }) => sign.length > 0),
    ],
    width,
  );
