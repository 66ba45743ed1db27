import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pointsFromCsv, type PointForm } from '../../../src/importers/csv/pointsFromCsv.ts';
import { foundIn, pointsOf, reasonOf } from '../foundIn.ts';

const usual: PointForm = { chosen: null, usual: 'feet', order: null };
const read = (text: string, form: Partial<PointForm> = {}) =>
  foundIn(pointsFromCsv(text, { ...usual, ...form }));
const points = (text: string, form: Partial<PointForm> = {}) =>
  pointsOf(read(text, form), 'All of it › points').map(({ name, at, z }) => [name, at.x, at.y, z]);

describe('points in a list', () => {
  it('[I13] finds columns under headings in any order, with and without heights', () => {
    expect(
      points('Point,Northing (ft),Easting (ft),Elev (ft),Description\n7,2,1,3,IP found'),
    ).toEqual([['7 IP found', 12, 24, 36]]);
    expect(points('x;y;name\n1;2;A\n3;4;B')).toEqual([
      ['A', 12, 24, null],
      ['B', 36, 48, null],
    ]);
    expect(read('y,x\n1,2').groups.map(({ shape }) => shape)).toEqual(['points']);
    const mixed = read('name,x,y,z\nA,1,2,\nB,3,4,5');
    expect(pointsOf(mixed, 'All of it › heights').map(({ name, z }) => [name, z])).toEqual([
      ['B', 60],
    ]);
    expect(pointsOf(mixed, 'All of it › points')).toHaveLength(2);
  });

  it.each([
    ['A,1,2,3', null, ['A', 24, 12, 36]],
    ['A,1,2', null, ['A', 24, 12, null]],
    ['1,10,20,3', null, ['1', 240, 120, 36]],
    ['1,2', null, ['', 12, 24, null]],
    ['1,2,3', null, ['', 12, 24, 36]],
    ['1,2,3,A', null, ['A', 12, 24, 36]],
    ['1,10,20,3,pin', null, ['1 pin', 240, 120, 36]],
    ['1,10,20,,"pin, bent",old', null, ['1 pin, bent old', 240, 120, null]],
    ['1,10,20,3,pin', 'name, x, y, z, remark', ['1 pin', 120, 240, 36]],
    ['1,,10,,20,,3\n,,,,,,', null, ['1', 240, 120, 36]],
    ['1,2,3,A', 'y, x, z, name', ['A', 24, 12, 36]],
  ] as const)('[I13] %j without headings, in the order %j', (text, order, point) => {
    expect(points(text, { order })).toEqual([point]);
  });

  it('[I13] an order without headings is told, and whether a person chose it', () => {
    const text = '1,10,20,3,pin';
    expect(read(text).told[1]).toBe(
      'Columns parted by commas, without headings, taken as name, y (north), x (east), z, remark: choose another order if that is wrong',
    );
    expect(read(text, { order: 'name, x, y, z, remark' }).told[1]).toBe(
      'Columns parted by commas, without headings, taken as name, x (east), y (north), z, remark, as chosen',
    );
    expect(points('P,N,E,Z,D\n1,10,20,3,pin')).toEqual([['1 pin', 240, 120, 36]]);
  });

  it('[I13] a first line may say what parts the cells', () => {
    const found = read('sep=;\nname;x;y\n"A, B";1;2\nC;one;2');
    expect(pointsOf(found, 'All of it › points').map(({ name }) => name)).toEqual(['A, B']);
    expect(found.refused[0]?.where).toBe('line 4');
  });

  it('[I9] a move is told in the unit that the headings name', () => {
    const found = read('name,x_m,y_m\nA,500100,4200100\nB,500200,4200300');
    expect(found.told.at(-1)).toBe(
      'Moved: 0, 0 is here 500,000 east, 4,200,000 north in the file, in metres',
    );
    expect(pointsOf(found, 'All of it › points')[0]?.at.x).toBeCloseTo(100_000 / 25.4, 6);
  });

  it('[I13] a heading’s unit counts, then what is chosen, then how the site is measured', () => {
    expect(points('x_m,y_in\n2.54,7', { chosen: 'feet' })).toEqual([['', 100, 7, null]]);
    expect(points('x,y\n2.54,7.62', { chosen: 'metres' })).toEqual([['', 100, 300, null]]);
    expect(points('x,y\n254,508', { usual: 'centimetres' })).toEqual([['', 100, 200, null]]);
    // 1200 / 3937 m, 85 FR 62698: two parts in a million more than 12 in
    expect(points('x (US ft),y (US survey feet)\n1000,-2000')[0]?.[1]).toBeCloseTo(12_000.024, 6);
    expect(read('x_m,y_m\n1,2').told[0]).toBe('Read in metres, as the headings say');
    expect(read('x,y\n1,2').told[0]).toBe('The file names no unit: read in feet');
    expect(read('x,y\n1,2', { chosen: 'yards' }).told[0]).toBe('Read in yards, as chosen');
    expect(points(`x,y\n"5'-6 1/2""",2 m`)).toEqual([['', 66.5, 2000 / 25.4, null]]);
  });

  it('[I13] decimal commas are read where other marks part the cells, and told', () => {
    const found = read('name;x;y\nA;1,5;-2,25\nB;3;4');
    expect(found.told[1]).toBe(
      'Columns parted by semicolons, with decimal commas: name, x (east), y (north)',
    );
    expect(pointsOf(found, 'All of it › points').map(({ at }) => [at.x, at.y])).toEqual([
      [18, -27],
      [36, 48],
    ]);
    // beside points commas stand before thousands, or are no number
    const both = read('x;y\n1,500;2.5\n3,5;4.5');
    expect(pointsOf(both, 'All of it › points').map(({ at }) => at.x)).toEqual([18_000]);
    expect(both.refused).toEqual([
      { where: 'line 3', reason: 'x: expected a number, found “3,5”' },
    ]);
    expect(points('x\ty\n1,5\t2,5')).toEqual([['', 18, 30, null]]);
  });

  it('[I13] a bad row is told by its line, the others are brought; points far from the others are refused', () => {
    const found = read('name,x,y,z\nA,1,2,3\nB,one,2,3\n\nC,1,,3\nD,1,2,x\nE,4,5,6');
    expect(found.refused).toEqual([
      { where: 'line 3', reason: 'x: expected a number, found “one”' },
      { where: 'line 5', reason: 'y: expected a number, found “”' },
      { where: 'line 6', reason: 'z: expected a number, found “x”' },
    ]);
    expect(pointsOf(found, 'All of it › points').map(({ name }) => name)).toEqual(['A', 'E']);
    const plane = read('name,x,y\nA,2700100,215100\nB,2700200,215300\nC,0,0');
    expect(plane.told.at(-1)).toBe(
      'Moved: 0, 0 is here 2,700,000 east, 215,000 north in the file, in feet',
    );
    expect(plane.refused).toEqual([
      { where: 'line 4', reason: 'lies over 10 miles from the others' },
    ]);
    expect(pointsOf(plane, 'All of it › points')[0]?.at).toEqual({ x: 1200, y: 1200 });
    const two = read(
      'name,x,y\nA,100,900000\nB,900000,100\nC,900010,110\nD,110,900010\nE,900020,120',
    );
    expect(pointsOf(two, 'All of it › points').map(({ name }) => name)).toEqual(['B', 'C', 'E']);
    expect(two.told).toContain(
      'Kept what lies together: 3 of 5 things; the others lie over 10 miles off',
    );
  });

  it.each([
    [
      'name,x,height\nA,1,2',
      'line 1: expected a column for y or north, with a unit of ft, in, m, cm, mm or none; found “name, x, height”',
    ],
    [
      'northing,z\n1,2',
      'line 1: expected a column for x or east, with a unit of ft, in, m, cm, mm or none; found “northing, z”',
    ],
    ['x,y,X\n1,2,3', 'line 1: expected one column for x'],
    ['', 'line 1: expected points, found an empty file'],
    ['x,y\n', 'expected points below the headings, found none'],
    ['x,y\na,b', 'line 2: x: expected a number, found “a”'],
    [
      'x,y\n"1,2\n3,4',
      'line 2: a quotation mark is not closed: expected another before the end of the file, found “"1,2 3,4”',
    ],
    ['x;y\n"1"2;3', 'line 2: expected a semicolon behind a closing quotation mark, found “2;3”'],
  ])('[I13] %j is refused in one line', (text, reason) => {
    expect(reasonOf(pointsFromCsv(text, usual))).toBe(reason);
  });

  it('[I11] any text gives a result or one line, and never throws', () => {
    const text = fc.oneof(fc.string(), fc.stringMatching(/^(?:[xyz,;\t\n"'0-9.-]|name){0,60}$/));
    fc.assert(
      fc.property(text, fc.constantFrom(null, 'name, y, x, z, remark' as const), (one, order) => {
        expect(reasonOf(pointsFromCsv(one, { ...usual, order }))).not.toMatch(/\n/);
      }),
      { numRuns: 1000 },
    );
  });

  it('[I12] 50,000 points are read within ten seconds', () => {
    const rows = Array.from(
      { length: 50_000 },
      (_, n) => `${n},${n % 300},${n / 300},${n % 7},pin`,
    );
    const start = performance.now();
    const found = read(['point,east,north,elev,note', ...rows].join('\n'));
    expect(performance.now() - start).toBeLessThan(10_000);
    expect(pointsOf(found, 'All of it › heights')).toHaveLength(50_000);
  });
});
