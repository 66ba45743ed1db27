import { describe, expect, it } from 'vitest';
import { drawArea } from '../../../src/editor/tools/drawArea.ts';
import { drawBoundary } from '../../../src/editor/tools/drawBoundary.ts';
import { drawHeightZone } from '../../../src/editor/tools/drawHeightZone.ts';
import { drawUtility } from '../../../src/editor/tools/drawUtility.ts';
import { placeNote } from '../../../src/editor/tools/placeNote.ts';
import { placeTree } from '../../../src/editor/tools/placeTree.ts';
import type { Feature } from '../../../src/site/feature.ts';
import { openDocument } from '../../../src/site/openDocument.ts';
import { verticesOf } from '../../../src/site/pathOrder.ts';
import type { Site } from '../../../src/site/site.ts';
import { samplePlans } from '../../store/samplePlans.ts';
import { namedSite } from '../../store/namedSite.ts';
import { deskFor, drive, driven, move, press, typed } from '../drive.ts';
import { yard } from '../yard.ts';

const empty = namedSite('Empty');
const building = drawArea('building');

const featureOf = (site: Site): Feature | undefined => site.features['feature:1'];
const cornersOf = (site: Site) => {
  const feature = featureOf(site);
  if (feature === undefined || !('path' in feature)) return [];
  return verticesOf(feature.path).map(({ mark }) => [site.marks[mark]?.x, site.marks[mark]?.y]);
};

describe('drawShape', () => {
  it('[E8] a building is one commit when its first corner is tapped again', () => {
    const begun = drive(building, driven(building, empty), [
      press(0, 0),
      typed(360),
      press(100, 3),
      typed(240),
      press(358, -90),
      press(3, -238),
    ]);
    expect(begun.labels).toEqual([]);
    const { site, labels, state, selection } = drive(building, begun, [press(-4, 3)]);
    expect(labels).toEqual(['Draw building']);
    expect(cornersOf(site)).toEqual([
      [0, 0],
      [360, 0],
      [360, -240],
      [0, -240],
    ]);
    expect(state.corners).toEqual([]);
    expect(selection).toEqual({ kind: 'feature', id: 'feature:1' });
    expect(openDocument(site).ok).toBe(true);
  });

  it('[E8] every kind of ground ends closed by the word as by finishing', () => {
    for (const kind of ['building', 'paving', 'pool', 'keep-out'] as const) {
      for (const end of ['close', 'finish'] as const) {
        const tool = drawArea(kind);
        const three = [press(0, 0), press(300, 50), press(90, 400)];
        const { site } = drive(tool, driven(tool, empty), [...three, { do: end }]);
        expect(featureOf(site)?.kind).toBe(kind);
        expect(cornersOf(site)).toHaveLength(3);
      }
    }
  });

  it('[E8] ground with a height limit has the limits that are planned', () => {
    const three = [press(0, 0), press(300, 50), press(90, 400), press(3, 2)];
    for (const of of ['sight triangle', 'front yard'] as const) {
      const tool = drawHeightZone(of);
      const { site, labels } = drive(tool, driven(tool, empty), three);
      expect(labels).toEqual([`Draw ${of}`]);
      expect(featureOf(site)).toMatchObject({
        kind: 'height zone',
        of,
        ...samplePlans.heights[of],
      });
    }
  });

  it('[E8] too few points are said in one line and kept', () => {
    const two = drive(building, driven(building, empty), [press(0, 0), press(300, 50)]);
    const refused = drive(building, two, [{ do: 'finish' }]);
    expect(refused.say).toBe('A building needs at least 3 points, found 2');
    expect([refused.site, refused.state]).toEqual([two.site, two.state]);
    const twice = drive(building, two, [press(303, 48)]);
    expect(twice.say).toBe('That is where the last point is: expected one farther on');
    const short = drive(building, two, [typed(2), press(303, 50)]);
    expect(short.state.corners).toHaveLength(3);
  });

  it('[E8] a boundary ends open or closed, a utility line always open', () => {
    const three = [press(0, 0), press(3000, 50), press(90, 4000)];
    const closed = drive(drawBoundary, driven(drawBoundary, empty), [...three, press(2, 2)]);
    expect(featureOf(closed.site)).toMatchObject({ kind: 'boundary', closed: true });
    const open = drive(drawBoundary, driven(drawBoundary, empty), [...three, { do: 'finish' }]);
    expect(featureOf(open.site)).toMatchObject({ kind: 'boundary', closed: false });
    const pipe = drive(drawUtility, driven(drawUtility, empty), [...three, { do: 'close' }]);
    expect(pipe.say).toBe('A utility line is not closed');
    const laid = drive(drawUtility, pipe, [press(2, 2), { do: 'finish' }]);
    expect(featureOf(laid.site)).toMatchObject({ kind: 'utility', service: 'gas', tolerance: 24 });
    expect(cornersOf(laid.site)).toHaveLength(4);
  });

  it('[E8] takes corners back, drops all on leaving, keeps all for another tool', () => {
    const two = drive(building, driven(building, empty), [press(0, 0), press(300, 50)]);
    expect(drive(building, two, [{ do: 'back' }]).state.corners).toHaveLength(1);
    const left = drive(building, two, [{ do: 'leave' }]);
    expect([left.state.corners, left.labels]).toEqual([[], []]);
    expect(building.rest(two.state).corners).toEqual(two.state.corners);
  });

  it('[E8] shares the marks that it is drawn on', () => {
    const deck = drawArea('paving');
    const { site } = drive(deck, driven(deck, yard), [
      press(-2, 238),
      press(358, 242),
      press(200, 500),
      { do: 'close' },
    ]);
    const feature = featureOf(site);
    const marks = feature && 'path' in feature ? verticesOf(feature.path) : [];
    expect(marks.map(({ mark }) => mark).slice(0, 2)).toEqual(['mark:house4', 'mark:house3']);
    expect(Object.keys(site.marks)).toHaveLength(Object.keys(yard.marks).length + 1);
  });

  it('[E8] draws the hand to the first corner, and shows the piece with its length', () => {
    const four = [press(0, 0), press(360, 0), press(360, -240), press(0, -240)];
    const near = drive(building, driven(building, empty), [...four, move(4, -4)]);
    const shown = building.preview(near.state, deskFor(empty));
    const texts = shown.flatMap((one) => (one.kind === 'text' ? [one.text] : []));
    expect(texts).toContain(`20'-0"`);
    expect(building.prompt(near.state, deskFor(empty))).toBe(
      'Tap the next corner, or the first one to close',
    );
  });

  it('[E8] a tree and a note are set where the hand is, each at a mark of its own', () => {
    const tree = drive(placeTree, driven(placeTree, yard), [move(0, 0), press(2, 238)]);
    expect(tree.site.features['feature:1']).toMatchObject({ kind: 'tree', trunk: 6, roots: 36 });
    expect(tree.site.marks['mark:1']).toMatchObject({ x: 2, y: 238 });
    expect(tree.labels).toEqual(['Set tree']);
    const note = drive(placeNote, driven(placeNote, tree.site), [press(5, 5)]);
    expect(note.site.features['feature:2']).toMatchObject({ kind: 'note', text: '' });
    expect(note.selection).toEqual({ kind: 'feature', id: 'feature:2' });
    expect(openDocument(note.site).ok).toBe(true);
  });
});
