import { layOutSite } from '../../engine/layOutSite.ts';
import type { Layout } from '../../engine/layout.ts';
import { measuredTable } from '../../drawing/tables/measuredTable.ts';
import { markName } from '../../engine/survey/markName.ts';
import { helpsText, standsText } from '../../engine/survey/standsText.ts';
import { suspectText } from '../../engine/survey/suspectText.ts';
import { surveyed } from '../../engine/survey/surveyed.ts';
import type { MarkId } from '../../site/ids.ts';
import type { Mark } from '../../site/mark.ts';
import type { Site } from '../../site/site.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import { read } from '../../units/parsed.ts';
import { columns } from '../columns.ts';
import { readDocument } from '../readSite.ts';
import type { Verb } from '../verb.ts';
import { languageOption } from '../languageOption.ts';
import { phrase, phraseOf } from '../../phrases/phrase.ts';

/** A site as it was drawn and as it stands, laid out. */
interface Stood {
  readonly drawn: Site;
  readonly site: Site;
  readonly layout: Layout;
}

const markRows = ({ drawn, site, layout: { posts, survey } }: Stood): string[][] =>
  survey.taped.flatMap((id: MarkId) => {
    const [mark, was] = [site.marks[id], drawn.marks[id]];
    if (mark === undefined || was === undefined) return [];
    const write = (value: number): string => formatLength(inches(value), site.lengths);
    const held = mark.fixed
      ? phraseOf('mark')`fixed`
      : survey.loose.includes(id)
        ? phraseOf('mark')`loose`
        : phraseOf('mark')`held`;
    const moved = Math.hypot(mark.x - was.x, mark.y - was.y);
    return [
      [
        markName(site, posts, id),
        phrase`E ${write(mark.x)}`,
        phrase`N ${write(mark.y)}`,
        held,
        phrase`${write(moved)} from the sketch`,
      ],
    ];
  });

const linesOf = (stood: Stood): string[] => {
  const { site, layout } = stood;
  const { survey, posts } = layout;
  const next = helpsText(site, layout);
  return [
    standsText(survey),
    ...survey.suspects.map((suspect) => suspectText(site, posts, suspect)),
    ...(next === null ? [] : [phrase`Tape next: ${next}`]),
    '',
    phrase`Marks`,
    ...columns(markRows(stood), ['left', 'right', 'right']),
    '',
    phrase`Readings`,
    ...columns(measuredTable(site, layout).rows, ['left', 'right']),
  ];
};

const jsonOf = ({ site, layout: { survey } }: Stood): unknown => ({
  ...survey,
  body: survey.body === null ? null : { ...survey.body, marks: [...survey.body.marks] },
  marks: Object.fromEntries(
    survey.taped.map((id) => {
      const { x, y, fixed } = site.marks[id] as Mark;
      return [id, { x, y, fixed }];
    }),
  ),
});

/** `survey`: where the marks of a site stand by what was taped, and what the tapes say of each other. */
export const survey: Verb = {
  name: 'survey',
  does: phrase`solves where marks stand by the tapes, and says which reading is wrong`,
  places: ['SITE'],
  options: [languageOption],
  run: async ({ places: [path = '-'] }, io) => {
    const drawn = await readDocument(io, path);
    if (!drawn.ok) return drawn;
    const { site } = surveyed(drawn.value, null);
    const layout = layOutSite(site);
    const stood = { drawn: drawn.value, site, layout };
    return read({ text: linesOf(stood).join('\n'), json: jsonOf(stood), stopped: false });
  },
};
