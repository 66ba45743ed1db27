import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { untoldConditions } from '../../src/site/conditions.ts';
import type { Feature } from '../../src/site/feature.ts';
import type { FenceLine } from '../../src/site/fenceLine.ts';
import type { FenceSpec } from '../../src/site/fenceSpec.ts';
import type { Gate } from '../../src/site/gate.ts';
import { openDocument } from '../../src/site/openDocument.ts';
import { upgraded } from '../../src/site/upgraded.ts';
import { upgrades } from '../../src/site/upgrades.ts';
import { siteVersion } from '../../src/site/site.ts';
import type { Pipe } from '../../src/site/pipe.ts';
import type { PostPipe } from '../../src/site/postPipe.ts';
import type { Mark } from '../../src/site/mark.ts';
import { usualCounting } from '../../src/site/counting.ts';
import { plainWork } from '../../src/site/work.ts';
import { usualTrusts } from '../../src/site/trusts.ts';
import type { Site } from '../../src/site/site.ts';
import { sampleSite } from './sampleSite.ts';
import { versionOne } from './versionOne.ts';

type Entries<T> = readonly (readonly [string, T])[];

const entriesOf = <T>(map: Readonly<Record<string, T>>): Entries<T> => Object.entries<T>(map);

type Earlier = Omit<FenceSpec, 'linePost' | 'terminalPost' | 'gatePost' | 'selvage'> &
  Readonly<Record<'linePost' | 'terminalPost' | 'gatePost', Pipe>>;
type Hung = Omit<Gate, 'post'> & { readonly post: Pipe | null };

const ofPipe = ({ section, ...pipe }: PostPipe): Pipe => {
  expect(section).toBe('round');
  return pipe;
};

/** What versions 9 and 10 added taken out again, where it is as a document without it is brought up. */
const withoutSections = ({ lineage, offcuts, counting, specs, gates, ...site }: Site) => {
  const { lumber, ...counts } = counting;
  expect(lineage).toEqual({ job: null, saves: {} });
  expect([offcuts, lumber]).toEqual([{}, 192]);
  const built = entriesOf<FenceSpec>(specs).map(([id, spec]) => {
    const { linePost, terminalPost, gatePost, selvage, ...rest } = spec;
    expect(selvage).toBeNull();
    const pipes = {
      linePost: ofPipe(linePost),
      terminalPost: ofPipe(terminalPost),
      gatePost: ofPipe(gatePost),
    };
    return [id, { ...rest, ...pipes }] as const;
  });
  const hung = entriesOf<Gate>(gates).map(([id, gate]) => {
    const post = gate.post === null ? null : ofPipe(gate.post);
    return [id, { ...gate, post }] as const;
  });
  return {
    ...site,
    counting: counts,
    specs: Object.fromEntries(built) as Record<string, Earlier>,
    gates: Object.fromEntries(hung) as Record<string, Hung>,
  };
};

/** What version 8 added taken out as well. */
const withoutCounting = (opened: Site) => {
  const { counting, work, alternatives, specs, ...site } = withoutSections(opened);
  const { lumber: _lumber, ...usual } = usualCounting;
  expect([counting, work, alternatives]).toEqual([usual, plainWork, {}]);
  const built = entriesOf(specs).map(([id, { infill, ...spec }]) => {
    expect(infill).toEqual({ kind: 'chain link' });
    return [id, spec] as const;
  });
  return {
    ...site,
    specs: Object.fromEntries(built) as Record<string, Omit<Earlier, 'infill'>>,
  };
};

/** What version 7 added taken out as well. */
const withoutTowns = (opened: Site) => {
  const { conditions, townRules, features, gates, specs, ...site } = withoutCounting(opened);
  const { ice, ...told } = conditions;
  expect([ice, townRules]).toEqual([null, {}]);
  const seen = entriesOf<Feature>(features).map(([id, feature]) => {
    if (feature.kind !== 'utility') return [id, feature] as const;
    const { run, ...rest } = feature;
    expect(run).toBe('buried');
    return [id, rest] as const;
  });
  const hung = entriesOf(gates).map(([id, { threshold, ...rest }]) => {
    expect(threshold).toBeNull();
    return [id, rest] as const;
  });
  const built = entriesOf(specs).map(([id, spec]) => {
    const { middleRail, bottomRail, barbedWire, ...rest } = spec;
    expect([middleRail, bottomRail, barbedWire]).toEqual([null, null, null]);
    return [id, rest] as const;
  });
  return {
    ...site,
    conditions: told,
    features: Object.fromEntries(seen) as Record<string, Feature>,
    gates: Object.fromEntries(hung) as Record<string, Omit<Hung, 'threshold'>>,
    specs: Object.fromEntries(built) as Record<
      string,
      Omit<Earlier, 'infill' | 'middleRail' | 'bottomRail' | 'barbedWire'>
    >,
  };
};

/** What version 6 added taken out as well. */
const withoutConditions = (opened: Site) => {
  const { conditions, acceptances, specs, lines, gates, ...site } = withoutTowns(opened);
  const { ice: _ice, ...untold } = untoldConditions;
  expect([conditions, acceptances]).toEqual([untold, {}]);
  const drawn = Object.entries<FenceLine>(lines).map(([id, { guards, ...line }]) => {
    expect(guards).toBeNull();
    return [id, line] as const;
  });
  const hung = entriesOf(gates).map(([id, gate]) => {
    const { latchHeight, route, powered, ...rest } = gate;
    expect([latchHeight, route, powered]).toEqual([null, null, false]);
    return [id, rest] as const;
  });
  const built = entriesOf(specs).map(([id, spec]) => {
    const { grade, mesh, wire, solid, leastDepth, ...rest } = spec;
    expect([grade, mesh, wire, solid, leastDepth]).toEqual([null, null, null, null, 0]);
    return [id, rest] as const;
  });
  return {
    ...site,
    lines: Object.fromEntries(drawn),
    gates: Object.fromEntries(hung),
    specs: Object.fromEntries(built),
  };
};

/** What version 5 added taken out as well. */
const withoutSurvey = (opened: Site) => {
  const { marks, observations, trusts, origin, underlays, pictures, ...site } =
    withoutConditions(opened);
  expect({ observations, trusts, origin, underlays, pictures }).toEqual({
    observations: {},
    trusts: usualTrusts,
    origin: null,
    underlays: {},
    pictures: {},
  });
  const drawn = Object.entries<Mark>(marks).map(([id, { fixed, ...mark }]) => {
    expect(fixed).toBe(false);
    return [id, mark] as const;
  });
  return { ...site, marks: Object.fromEntries(drawn) };
};

describe('bringing a document to today’s version', () => {
  const steps = {
    1: ({ colour, ...rest }: Readonly<Record<string, unknown>>) => ({ ...rest, ink: colour }),
    2: (document: Readonly<Record<string, unknown>>) => ({ ...document, ink: [document['ink']] }),
  };

  it('[S3] walks every step in turn and leaves the old document as it was', () => {
    const old = { version: 1, colour: 'red' };
    expect(upgraded(old, { steps, to: 3 })).toEqual({
      ok: true,
      value: { version: 3, ink: ['red'] },
    });
    expect(old).toEqual({ version: 1, colour: 'red' });
    expect(upgraded({ version: 2, ink: 'red' }, { steps, to: 3 })).toEqual({
      ok: true,
      value: { version: 3, ink: ['red'] },
    });
  });

  it('[S3] a document of today is handed back as it is', () => {
    const today = { version: 3 };
    const opened = upgraded(today, { steps, to: 3 });
    expect(opened.ok && opened.value).toBe(today);
  });

  it.each([0, 1.5, '1', null, undefined, -1])('[S3] %j is no version', (version) => {
    expect(upgraded({ version }, { steps, to: 3 })).toMatchObject({
      ok: false,
      reason: expect.stringMatching(/^version: expected a whole number from 1 to 3, found /),
    });
  });

  it('[S3] a missing step and a step that fails are told in one line', () => {
    const reason = 'version: expected a file that can be brought to version 3, found 1';
    expect(upgraded({ version: 1 }, { steps: {}, to: 3 })).toEqual({ ok: false, reason });
    const failing = {
      1: () => {
        throw new TypeError('no');
      },
    };
    expect(upgraded({ version: 1 }, { steps: failing, to: 3 })).toEqual({ ok: false, reason });
  });

  it('[S3] there is a step from every earlier version of the format', () => {
    const earlier = Array.from({ length: siteVersion - 1 }, (_, n) => String(n + 1));
    expect(Object.keys(upgrades)).toEqual(earlier);
  });

  it('[S3] a site of version 1 opens: each leaf has its one width at the top, parts are unsure', () => {
    expect(openDocument(versionOne)).toEqual({
      ok: true,
      value: { ...sampleSite, pins: {}, shots: {} },
    });
  });

  it('[S3] a site of version 2 opens as it was, with no pins, no shots and no pull posts', () => {
    const old = JSON.parse(readFileSync('tests/site/versionTwo.site.json', 'utf8')) as Site;
    expect(old.version).toBe(2);
    const opened = openDocument(old);
    if (!opened.ok) throw new Error(opened.reason);
    const { version, pins, shots, levels, lines, features, specs, ...rest } = withoutSurvey(
      opened.value,
    );
    const { version: _two, lines: drawn, features: seen, specs: before, ...was } = old;
    expect(version).toBe(siteVersion);
    expect([pins, shots, levels]).toEqual([{}, {}, { allowable: null, notes: {} }]);
    expect(rest).toEqual(was);
    for (const [id, feature] of Object.entries(seen)) {
      const told = feature.kind === 'boundary' ? { ...feature, setback: 0 } : feature;
      expect(features[id as `feature:${string}`]).toEqual(told);
    }
    for (const [id, line] of Object.entries(drawn)) {
      expect(lines[id as `line:${string}`]).toEqual({
        ...line,
        stepped: {},
        follows: null,
        curved: {},
        walls: {},
      });
    }
    for (const [id, spec] of Object.entries(before)) {
      expect(specs[id as `spec:${string}`]).toEqual({
        ...spec,
        pullInterval: null,
        pullGrade: null,
        gapUnder: 2,
        onCurves: 'by radius',
        foundationToe: null,
      });
    }
  });

  it('[S3] a site of version 3 opens as it was, with straight legs on the ground and no level notes', () => {
    const old = JSON.parse(readFileSync('tests/site/versionThree.site.json', 'utf8')) as Site;
    expect(old.version).toBe(3);
    const opened = openDocument(old);
    if (!opened.ok) throw new Error(opened.reason);
    const { version, levels, lines, specs, ...rest } = withoutSurvey(opened.value);
    const { version: _three, lines: drawn, specs: before, ...was } = old;
    expect(version).toBe(siteVersion);
    expect(levels).toEqual({ allowable: null, notes: {} });
    expect(rest).toEqual(was);
    for (const [id, line] of Object.entries(drawn)) {
      expect(lines[id as `line:${string}`]).toEqual({ ...line, curved: {}, walls: {} });
    }
    for (const [id, spec] of Object.entries(before)) {
      expect(specs[id as `spec:${string}`]).toEqual({
        ...spec,
        onCurves: 'by radius',
        foundationToe: null,
      });
    }
  });

  it('[S3] a site of version 4 opens as it was, with nothing observed and no picture', () => {
    const old = JSON.parse(readFileSync('tests/site/versionFour.site.json', 'utf8')) as Site;
    expect(old.version).toBe(4);
    const opened = openDocument(old);
    if (!opened.ok) throw new Error(opened.reason);
    const { version, ...rest } = withoutSurvey(opened.value);
    const { version: _four, ...was } = old;
    expect(version).toBe(siteVersion);
    expect(rest).toEqual(was);
  });

  it('[S3] a site of version 5 opens as it was, with nothing said of its ground, wind, fabric and steel', () => {
    const old = JSON.parse(readFileSync('tests/site/versionFive.site.json', 'utf8')) as Site;
    expect(old.version).toBe(5);
    const opened = openDocument(old);
    if (!opened.ok) throw new Error(opened.reason);
    const { version, ...rest } = withoutConditions(opened.value);
    const { version: _five, ...was } = old;
    expect(version).toBe(siteVersion);
    expect(rest).toEqual(was);
  });

  it('[S3] a site of version 6 opens as it was, its utilities buried, with no rules of towns', () => {
    const old = JSON.parse(readFileSync('tests/site/versionSix.site.json', 'utf8')) as Site;
    expect(old.version).toBe(6);
    expect(Object.values<Feature>(old.features).some(({ kind }) => kind === 'utility')).toBe(true);
    const opened = openDocument(old);
    if (!opened.ok) throw new Error(opened.reason);
    const { version, ...rest } = withoutTowns(opened.value);
    const { version: _six, ...was } = old;
    expect(version).toBe(siteVersion);
    expect(rest).toEqual(was);
  });

  it('[S3] a site of version 7 opens as it was, counted as the trade does, its fence chain link', () => {
    const old = JSON.parse(readFileSync('tests/site/versionSeven.site.json', 'utf8')) as Site;
    expect(old.version).toBe(7);
    const opened = openDocument(old);
    if (!opened.ok) throw new Error(opened.reason);
    const { version, ...rest } = withoutCounting(opened.value);
    const { version: _seven, ...was } = old;
    expect(version).toBe(siteVersion);
    expect(rest).toEqual(was);
  });

  it('[S3] a site of version 8 opens as it was, its posts round, with nothing left over in the yard', () => {
    const old = JSON.parse(readFileSync('tests/site/versionEight.site.json', 'utf8')) as Site;
    expect(old.version).toBe(8);
    expect(Object.values<Gate>(old.gates).some(({ post }) => post !== null)).toBe(true);
    const opened = openDocument(old);
    if (!opened.ok) throw new Error(opened.reason);
    const { version, ...rest } = withoutSections(opened.value);
    const { version: _eight, specs, ...was } = old;
    expect(version).toBe(siteVersion);
    const before = entriesOf<object>(specs).map(([id, spec]) => {
      const { postSection, ...kept } = spec as { readonly postSection: string };
      expect(postSection).toBe('round');
      return [id, kept] as const;
    });
    expect(rest).toEqual({ ...was, specs: Object.fromEntries(before) });
  });

  it('[S3] a site of version 9 opens as it was, coming from nowhere', () => {
    const old = JSON.parse(readFileSync('tests/site/versionNine.site.json', 'utf8')) as Site;
    expect(old.version).toBe(9);
    const opened = openDocument(old);
    if (!opened.ok) throw new Error(opened.reason);
    const { version, lineage, ...rest } = opened.value;
    const { version: _nine, ...was } = old;
    expect([version, lineage]).toEqual([siteVersion, { job: null, saves: {} }]);
    expect(rest).toEqual(was);
  });

  it('[S3] a damaged site of version 1 is refused by the place of the damage', () => {
    const refusal = (gates: unknown): unknown => openDocument({ ...versionOne, gates });
    expect(refusal([])).toMatchObject({
      ok: false,
      reason: expect.stringMatching(/^gates: expected an object/),
    });
    expect(refusal({ 'gate:1': 7 })).toMatchObject({
      ok: false,
      reason: expect.stringMatching(/^gates › gate:1: expected an object, found 7/),
    });
  });
});
