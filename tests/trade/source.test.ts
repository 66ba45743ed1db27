import { describe, expect, it } from 'vitest';
import { cautions } from '../../src/trade/cautions.ts';
import { cornerAngles } from '../../src/trade/cornerAngles.ts';
import { postSizes } from '../../src/trade/fencePosts.ts';
import { augerSizes, holeRule } from '../../src/trade/footings.ts';
import { gatePostSizes } from '../../src/trade/gatePosts.ts';
import { assumedHardware } from '../../src/trade/hardware.ts';
import { fencePipes } from '../../src/trade/pipes.ts';
import { courtPostTops, defaultPostTops } from '../../src/trade/postTops.ts';
import { maxSpacing } from '../../src/trade/spacing.ts';
import { standardGates } from '../../src/trade/standardGates.ts';
import { toleranceZones } from '../../src/trade/toleranceZones.ts';
import { utilityColourCode } from '../../src/trade/utilityColours.ts';
import {
  coreCover,
  coreDepth,
  coreRoom,
  plateAnchors,
  plateSide,
} from '../../src/trade/wallSets.ts';

const rows = [
  ...fencePipes,
  ...postSizes,
  ...gatePostSizes,
  ...cornerAngles,
  ...assumedHardware,
  ...standardGates,
  defaultPostTops,
  courtPostTops,
  maxSpacing,
  ...toleranceZones,
  coreDepth,
  coreRoom,
  coreCover,
  plateSide,
  plateAnchors,
];
const sources = [
  ...rows.map(({ source }) => source),
  ...cautions.flatMap(({ source }) => (source ? [source] : [])),
  holeRule,
  augerSizes,
  utilityColourCode,
];

describe('sources', () => {
  it('[T1] every row has one line that names where the figure is from', () => {
    expect(sources.length).toBeGreaterThan(40);
    expect(sources.filter(({ text }) => text.trim().length < 15 || text.includes('\n'))).toEqual(
      [],
    );
  });

  it('[T1] the line says so where nothing was read, and only there', () => {
    const says = ({ text }: { text: string }) => ({
      practice: text.includes('no published source'),
      memory: text.includes('from memory'),
    });
    for (const source of sources) {
      expect([source.text, says(source).practice]).toEqual([
        source.text,
        source.status === 'practice',
      ]);
      if (source.status === 'memory') expect(says(source).memory).toBe(true);
    }
  });
});
