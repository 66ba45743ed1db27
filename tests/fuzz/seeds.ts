import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { bookToCsv } from '../../src/exporters/csv/bookToCsv.ts';
import { pricesToCsv } from '../../src/exporters/csv/pricesToCsv.ts';
import { stakesToCsv } from '../../src/exporters/csv/stakesToCsv.ts';
import { townRulesToCsv } from '../../src/exporters/csv/townRulesToCsv.ts';
import { toDxf } from '../../src/exporters/dxf/toDxf.ts';
import { toGeoJson } from '../../src/exporters/geojson/toGeoJson.ts';
import { toPdf } from '../../src/exporters/pdf/toPdf.ts';
import { loadOf } from '../../src/engine/load/loadOf.ts';
import { emptySite } from '../../src/site/emptySite.ts';
import { saveSite } from '../../src/site/saveSite.ts';
import { siteFile } from '../../src/site/siteFile.ts';
import { sampleYards } from '../drawing/sampleYards.ts';
import { quarryDeed, tiedDeed } from '../engine/calls/deeds.ts';
import { sheetFonts } from '../exporters/pdf/sheetFonts.ts';
import { scene } from '../exporters/scene.ts';
import { block, dxfText, entity, line } from '../importers/dxf/dxfText.ts';
import { pdfCarrying } from './mutate/madePdf.ts';

/** What files are of that readers take. */
export const kinds = [
  'site file',
  'crew sheet',
  'GeoJSON',
  'DXF',
  'points',
  'grade shots',
  'price list',
  'hardware book',
  'town rules',
  'picture',
  'deed',
  'figure',
] as const;

export type Kind = (typeof kinds)[number];

/** Sound files of every kind, as bytes, to be spoilt. */
export type Seeds = Readonly<Record<Kind, readonly Uint8Array[]>>;

const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);

const older = ['Two', 'Three', 'Four', 'Five', 'Six', 'Seven', 'Eight'].map((version) =>
  readFileSync(join(import.meta.dirname, '..', 'site', `version${version}.site.json`), 'utf8'),
);

const empty = saveSite(emptySite({ specs: {}, hardware: {} }));

/** The yards but for the longest, which says no more and takes long. */
const yards = sampleYards.filter(({ text }) => text.length < 20_000);

const handMadeDxf = dxfText({
  units: 6,
  layers: [
    ['FENCE', 0, 7],
    ['OLD', 1, -7],
  ],
  blocks: [
    block('B', [1, 1], line('0', 0, 0, 1, 1), entity('CIRCLE', '0', [10, 1], [20, 1], [40, 2])),
  ],
  entities: [
    line('FENCE', 0, 0, 5, 0),
    line('FENCE', 5, 0, 5, 9),
    entity(
      'LWPOLYLINE',
      'LOT',
      [90, 3],
      [70, 1],
      [10, 0],
      [20, 0],
      [42, 1],
      [10, 20],
      [20, 0],
      [10, 9],
      [20, 9],
    ),
    entity('ARC', 'PAVING', [10, 5], [20, 5], [40, 3], [50, 10], [51, 190]),
    entity(
      'INSERT',
      'TREES',
      [2, 'B'],
      [10, 4],
      [20, 4],
      [41, 2],
      [42, -1],
      [50, 30],
      [70, 3],
      [71, 2],
      [44, 5],
      [45, 5],
    ),
    entity('POINT', 'SHOTS', [10, 3], [20, 3], [30, 101.5]),
    entity('MTEXT', 'NOTES', [10, 3], [20, 3], [40, 1], [1, '\\A1;old {\\H2;well} 90%%d']),
    entity('POLYLINE', 'GAS', [66, 1], [70, 0]) +
      entity('VERTEX', 'GAS', [10, 0], [20, 1]) +
      entity('VERTEX', 'GAS', [10, 9], [20, 1], [42, 0.5]) +
      entity('SEQEND', 'GAS'),
  ],
});

const handMadeGeoJson = JSON.stringify({
  type: 'FeatureCollection',
  features: [
    ...[
      [
        'Polygon',
        [
          [
            [0, 0],
            [0.001, 0],
            [0.001, 0.001],
            [0, 0],
          ],
          [
            [0.0002, 0.0001],
            [0.0004, 0.0001],
            [0.0004, 0.0002],
            [0.0002, 0.0001],
          ],
        ],
      ],
      [
        'LineString',
        [
          [0, 0],
          [0.0005, 0.0005, 12],
          [0.0009, 0],
        ],
      ],
      ['Point', [0.0001, 0.0001, 30.5]],
      [
        'MultiPoint',
        [
          [0, 0],
          [0.0003, 0.0003],
        ],
      ],
      [
        'MultiPolygon',
        [
          [
            [
              [0, 0],
              [0.0001, 0],
              [0.0001, 0.0001],
              [0, 0],
            ],
          ],
        ],
      ],
    ].map(([type, coordinates], n) => ({
      type: 'Feature',
      properties: {
        name: `thing ${n}`,
        layer: ['lot', 'gas', 'shots'][n % 3],
        solid_in: 36,
        open_in: 48,
      },
      geometry: { type, coordinates },
    })),
    {
      type: 'Feature',
      properties: null,
      geometry: {
        type: 'GeometryCollection',
        geometries: [{ type: 'Point', coordinates: [0, 0] }],
      },
    },
  ],
});

const pointTexts = [
  'name,x,y,z,description\n1,0,0,100.5,pin\n2,50,0,101,"old, pin"\n3,50.25,30,,tree\n',
  '1,5000.00,2000.00,100.00,IP\n2,5010.25,2044.10,100.50,FC\n3,5020,2050,101,EP\n',
  'sep=;\nPunkt;E (m);N (m);h (m)\nA;1,5;2,5;100,1\nB;3;4;100,2\n'.replace('Punkt', 'Point'),
  'x\ty\tz\n0\t0\t1\n12\' 6"\t4 m\t2\n',
];

const pictures = [
  [
    0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13, 0x49, 0x48, 0x44, 0x52, 0, 0, 4, 0,
    0, 0, 3, 0, 8, 2, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 3, 0x74, 0x45, 0x58, 0x74, 1, 2, 3, 0, 0, 0, 0,
  ],
  [
    0xff, 0xd8, 0xff, 0xe0, 0, 7, 0x4a, 0x46, 0x49, 0x46, 0, 0xff, 0xe1, 0, 4, 1, 2, 0xff, 0xff,
    0xc0, 0, 11, 8, 3, 0, 4, 0, 1, 1, 0x11, 0,
  ],
  [
    ...Buffer.from(
      'RIFF\x24\0\0\0WEBPVP8X\x0a\0\0\0\x08\0\0\0\xff\x0f\0\xff\x0b\0\0\0\0\0',
      'latin1',
    ),
  ],
  [
    ...Buffer.from(
      'RIFF\x24\0\0\0WEBPVP8 \x0a\0\0\0\x30\x01\0\x9d\x01\x2a\x80\x02\xe0\x01\0\0\0\0',
      'latin1',
    ),
  ],
  [
    ...Buffer.from(
      'RIFF\x24\0\0\0WEBPVP8L\x0a\0\0\0\x2f\x7f\xc2\x77\0\0\0\0\0\0\0\0\0\0',
      'latin1',
    ),
  ],
].map((bytes) => new Uint8Array(bytes));

const figures = [
  '56 1/4',
  '9\'-10 1/2"',
  '118.5in',
  '3005mm',
  '3.005 m',
  '1,250.5 ft',
  '45.5°',
  '½',
  '1 3/4..2',
  '1 3/4, 1 7/8; 2',
  `N 26°10'30" E`,
  '117°22\'40"',
  '26-10-30',
  '4 chains 25 links',
  '16½ rods',
  '12.50',
  '1,250.00',
  '1:5000',
  '1 in 5,000',
];

const info = {
  title: 'Yard',
  author: '',
  subject: '',
  keywords: [],
  day: null,
  id: '0'.repeat(32),
};

const sheets = async (): Promise<Uint8Array[]> => {
  const own = await Promise.all(
    yards.slice(0, 2).map(({ site }) => toPdf([scene], sheetFonts, info, siteFile(site))),
  );
  return [
    ...own,
    pdfCarrying(empty),
    pdfCarrying(yards[0]?.text ?? empty),
    pdfCarrying('{}', 'other.json'),
  ];
};

/** Every kind's sound files: the sample sites, what this program writes of them, and what the tests read. */
export const soundFiles = async (): Promise<Seeds> => {
  const found = yards.map(({ site, layout }) => ({
    site,
    layout,
    on: { latitude: 50, longitude: 10 },
  }));
  const geo = found.flatMap(({ site, layout, on }) => {
    const text = toGeoJson({ ...site, origin: on }, layout);
    return text.ok ? [text.value] : [];
  });
  const stakes = found.map(({ site, layout }) =>
    stakesToCsv(site, layout, { unit: 'feet', east: 0, north: 0 }),
  );
  const shots = [
    'x (ft),y (ft),z (ft),name\n0,0,100,a\n10,0,101.5,b\n0,10,99,\n',
    '1,20.5,10.25,100.1,EP\n2,30,11,100.4,\n',
  ];
  const rule = {
    town: 'Ardmere',
    measure: 'fence no higher than',
    limit: 72,
    words: 'No higher, in “yards”',
    source: 'Ours',
  };
  const texts: Readonly<Record<Exclude<Kind, 'crew sheet' | 'picture'>, readonly string[]>> = {
    'site file': [empty, empty, ...yards.map(({ text }) => text), ...older],
    GeoJSON: [handMadeGeoJson, handMadeGeoJson, ...geo.slice(0, 3)],
    DXF: [
      handMadeDxf,
      handMadeDxf,
      handMadeDxf,
      ...yards.slice(0, 2).map(({ site, layout }) => toDxf(site, layout)),
    ],
    points: [...pointTexts, ...pointTexts, ...stakes.slice(0, 2)],
    'grade shots': [...shots, ...pointTexts],
    'price list': found
      .slice(0, 2)
      .map(({ site, layout }) =>
        pricesToCsv(loadOf(site, layout).lines)
          .replaceAll(',,,,', ',12.50,USD,A-1,')
          .replaceAll(',,,', ',7,,'),
      ),
    'hardware book': found.slice(0, 3).map(({ site }) => bookToCsv(site.hardware)),
    'town rules': [
      townRulesToCsv({ 'town-rule:1': rule } as unknown as Parameters<typeof townRulesToCsv>[0]),
    ],
    deed: [
      quarryDeed,
      tiedDeed,
      "N26°10'E 285.10\nS75°25'E 610.45\nS15°30'W 720.48\nN1°42'W 203.00",
    ],
    figure: figures,
  };
  const all = Object.entries(texts).map(([kind, list]) => [kind, list.map(bytesOf)] as const);
  return {
    ...Object.fromEntries(all),
    'crew sheet': await sheets(),
    picture: pictures,
  } as unknown as Seeds;
};
