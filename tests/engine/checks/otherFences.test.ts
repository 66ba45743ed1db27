import { describe, expect, it } from 'vitest';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { fitsOf } from '../../../src/engine/checks/fitsOf.ts';
import { postStructures } from '../../../src/engine/structure/postStructures.ts';
import { usualBoards } from '../../../src/engine/usualBoards.ts';
import { usualPanels } from '../../../src/engine/usualPanels.ts';
import { addShots } from '../../../src/site/edits/addShots.ts';
import { changeSpec } from '../../../src/site/edits/changeSpec.ts';
import { setConditions } from '../../../src/site/edits/setConditions.ts';
import { setGuards } from '../../../src/site/edits/setGuards.ts';
import { changeHardware } from '../../../src/site/edits/changeHardware.ts';
import type { FenceSpec } from '../../../src/site/fenceSpec.ts';
import type { Infill } from '../../../src/site/infill.ts';
import { roundPost } from '../../../src/site/roundPost.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { loadLines } from '../load/loadLines.ts';
import { bare, fence, firstGate, gateOn, spec as wire } from '../plainYard.ts';

const drawn = fence(bare, [
  [0, 0],
  [480, 0],
]);
const { spec: boards } = usualBoards(inches(72));
const { spec: panels } = usualPanels(inches(72));
const as = (spec: FenceSpec, site: Site = drawn): Site => changeSpec(site, 'spec:six', spec);
const windy = (site: Site): Site =>
  setConditions(site, { wind: { speed: 100, exposure: 'C' }, frost: inches(48) });
const rulesOf = (site: Site): string[] => layOutSite(site).flags.map(({ rule }) => rule);
const spaced = (gap: number): Infill => ({
  kind: 'boards',
  board: '',
  rail: '2 × 4',
  rails: 3,
  width: inches(3.5),
  gap: inches(gap),
});

describe('fence that is no chain link, compared', () => {
  it('[F48] square posts are told not to be compared with the wind; frost is compared all the same', () => {
    const rules = rulesOf(windy(as(boards)));
    expect(rules).toContain('square posts in the wind');
    expect(rules).toContain('holes above frost');
    expect(rules).not.toContain('posts bend in the wind');
    expect(rulesOf(as(boards))).not.toContain('square posts in the wind');
  });

  it('[F48] boards on round posts are as solid as they are wide of board and gap', () => {
    const posts = {
      linePost: wire.linePost,
      terminalPost: wire.terminalPost,
      gatePost: wire.gatePost,
    };
    // 3.5 of 14 in is a quarter, 3.5 of 4 seven eighths: more than the table of open frames goes
    const open = windy(as({ ...boards, ...posts, infill: spaced(10.5) }));
    const [found] = [...postStructures(open, layOutSite(open)).values()];
    expect(found?.[0]?.wind).toMatchObject({ solidity: 0.25 });
    expect(rulesOf(windy(as({ ...boards, ...posts, infill: spaced(0.5) })))).toContain(
      'too solid for the table',
    );
    const barred = windy(as({ ...panels, ...posts, solid: 0.3 }));
    const [panelled] = [...postStructures(barred, layOutSite(barred)).values()];
    expect(panelled?.[0]?.wind).toMatchObject({ solidity: 0.3 });
    expect(rulesOf(windy(as({ ...panels, ...posts })))).toContain('too solid for the table');
  });

  it('[F49] a leaf on a square post is a caution, whatever its hinge is made for', () => {
    const gated = gateOn(as(boards), 0, { from: 'middle', offset: 0 });
    expect(rulesOf(gated)).toContain('leaf on a square post');
    const made = changeHardware(gated, 'hardware:hinge', {
      fits: { post: { low: inches(3), high: inches(6) }, frame: null },
    });
    const laid = layOutSite(made);
    const rows = fitsOf(made, laid, laid.gates[firstGate(made)]!);
    expect(rows.find(({ role, against }) => role === 'hinge' && against === 'post')).toMatchObject({
      od: null,
      fits: null,
    });
    const round = changeSpec(made, 'spec:six', { gatePost: roundPost(wire.gatePost) });
    expect(rulesOf(round)).not.toContain('leaf on a square post');
  });

  it('[F50] round a pool boards tell their gaps and panels that nobody has said them', () => {
    // CPSC Publication 362: 1 3/4 in where rails can be climbed
    const pool = (spec: FenceSpec) => rulesOf(setGuards(as(spec), 'line:1', 'pool'));
    expect(pool({ ...boards, infill: spaced(2) })).toContain('gaps of a pool barrier');
    expect(pool({ ...boards, infill: spaced(1.75) })).not.toContain('gaps of a pool barrier');
    expect(pool(panels)).toContain('gaps of a pool barrier');
    for (const spec of [boards, panels]) {
      expect(pool(spec)).not.toContain('mesh of a pool barrier');
    }
    // three rails of a fence 6 ft high are 3 ft apart: less than 45 in
    expect(pool(boards)).toContain('rails of a pool barrier');
    expect(pool(panels)).not.toContain('rails of a pool barrier');
  });

  it('[F48] posts are not compared with the table of chain link', () => {
    const thin = { ...wire.linePost, od: inches(1.315) };
    expect(rulesOf(as({ ...wire, linePost: thin }))).toContain('posts thinner than usual');
    expect(rulesOf(as({ ...panels, linePost: thin }))).not.toContain('posts thinner than usual');
  });

  it('[F51] panels on a slope are told how much the ground rises under one, and level ones nothing', () => {
    const shots = [-1000, 1500].flatMap((x) =>
      [-1000, 1000].map((y) => ({ x, y, z: inches(0.1 * x), label: '' })),
    );
    const site = addShots(as(panels), shots);
    const flag = layOutSite(site).flags.find(({ rule }) => rule === 'panels lean with the ground');
    // 98.5 along a grade of 10 % are 98.01 in plan and 9.8 up
    expect(flag?.message).toMatch(
      /rises 9 51\/64" under one panel|rises 9 3\/4" |rises 9 13\/16" /,
    );
    expect(rulesOf(addShots(as(boards), shots))).not.toContain('panels lean with the ground');
    const level = shots.map((shot) => ({ ...shot, z: inches(0) }));
    expect(rulesOf(addShots(as(panels), level))).not.toContain('panels lean with the ground');
  });

  it('[F52] a narrow mesh has no twisted edges, and fabric is listed by its edges where they are said', () => {
    // ASTM A392-03 3.1.4: not on a mesh below 2 in
    const woven = (mesh: number, selvage: FenceSpec['selvage']) =>
      as({ ...wire, mesh: inches(mesh), selvage });
    const rule = 'twisted edge of a narrow mesh';
    expect(rulesOf(woven(1.75, 'twisted top edge'))).toContain(rule);
    expect(rulesOf(woven(2, 'twisted both edges'))).not.toContain(rule);
    expect(rulesOf(woven(1, 'knuckled both edges'))).not.toContain(rule);
    expect(rulesOf(woven(1, null))).not.toContain(rule);
    const listed = loadLines(woven(2, 'twisted top edge')).find(({ code }) =>
      code.startsWith('fabric'),
    );
    expect(listed?.code).toBe('fabric 72in-2-0.148-twisted-top-edge');
    expect(listed?.item).toMatch(/wire, twisted top edge$/);
    expect(listed?.sold?.pack).toMatch(/^roll of/);
  });
});
