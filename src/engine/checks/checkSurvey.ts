import { marksObserved } from '../../site/marksObserved.ts';
import type { Site } from '../../site/site.ts';
import type { Flag } from '../flag.ts';
import type { Layout } from '../layout.ts';
import { suspectText } from '../survey/suspectText.ts';

/** One line for each reading that is most likely wrong, planted at the first of its marks. */
export const checkSurvey = (
  site: Site,
  { posts, survey }: Pick<Layout, 'posts' | 'survey'>,
): Flag[] =>
  survey.suspects.flatMap((suspect): Flag[] => {
    const [first] = suspect.ids;
    const seen = first === undefined ? undefined : site.observations[first];
    const [id] = seen === undefined ? [] : Object.values(marksObserved(seen));
    const at = id === undefined ? undefined : site.marks[id];
    if (id === undefined || at === undefined) return [];
    return [
      {
        level: 'settle',
        rule: 'reading disagrees',
        place: { kind: 'mark', id },
        at: { x: at.x, y: at.y },
        message: suspectText(site, posts, suspect),
      },
    ];
  });
