import { expect, it } from 'vitest';
import { placeShot } from '../../../src/editor/tools/placeShot.ts';
import { deskFor, drive, driven, press, release, typed } from '../drive.ts';
import { inches } from '../../../src/units/inches.ts';
import { yard } from '../yard.ts';

const finish = { do: 'finish' } as const;

it('[E15] sets a shot when its height is there, and offers it for the next', () => {
  const first = drive(placeShot, driven(placeShot, yard), [
    press(10, 20),
    release(10, 20),
    typed(-30),
    finish,
  ]);
  expect(first.labels).toEqual(['Set grade shot']);
  expect(first.site.shots).toEqual({ 'shot:1': { x: 10, y: 20, z: -30, label: '' } });
  expect(first.selection).toEqual({ kind: 'shot', id: 'shot:1' });
  const next = drive(placeShot, first, [press(50, 60), release(50, 60)]);
  expect(placeShot.asked?.(next.state, deskFor(next.site))).toMatchObject({
    at: { x: 50, y: 60 },
    offered: -30,
  });
  expect(next.site).toBe(first.site);
  const second = drive(placeShot, next, [finish]);
  expect(second.site.shots['shot:2']).toMatchObject({ x: 50, y: 60, z: -30 });
});

it('[E15] sets nothing before, and moves to where it is tapped again', () => {
  const none = drive(placeShot, driven(placeShot, yard), [finish]);
  expect(none.site).toBe(yard);
  expect(none.say).toBe('Tap where the shot was taken first');
  const moved = drive(placeShot, none, [
    press(1, 1),
    release(1, 1),
    press(7, 8),
    release(7, 8),
    finish,
  ]);
  expect(Object.values(moved.site.shots)).toEqual([{ x: 7, y: 8, z: 0, label: '' }]);
  const left = drive(placeShot, driven(placeShot, yard), [
    press(1, 1),
    release(1, 1),
    { do: 'leave' },
    finish,
  ]);
  expect(left.site).toBe(yard);
});

it('[E15] takes a height that was levelled with the name of its point, once', () => {
  const offered = drive(placeShot, driven(placeShot, yard), [
    { do: 'offer', height: inches(51), name: 'P3' },
  ]);
  expect(placeShot.prompt(offered.state, deskFor(yard))).toBe('Tap where P3 was read');
  const asked = drive(placeShot, offered, [press(5, 6), release(5, 6)]);
  expect(placeShot.asked?.(asked.state, deskFor(asked.site))).toEqual(
    expect.objectContaining({
      offered: 51,
      words: expect.objectContaining({ field: 'Height of P3, − below the datum' }),
    }),
  );
  // dropped where it was put, it can be put again
  const dropped = drive(placeShot, asked, [{ do: 'leave' }, press(7, 8), release(7, 8), finish]);
  expect(Object.values(dropped.site.shots)).toEqual([{ x: 7, y: 8, z: 51, label: 'P3' }]);
  const next = drive(placeShot, dropped, [press(9, 9), release(9, 9), finish]);
  expect(next.site.shots['shot:2']).toMatchObject({ z: 51, label: '' });
});
