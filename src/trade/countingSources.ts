import type { Source } from './source.ts';
import { phrase } from '../phrases/phrase.ts';

const published = (text: string): Source => ({ text, status: 'published' });
const memory = (text: string): Source => ({ text: phrase`${text}; from memory`, status: 'memory' });
const practice = (text: string): Source => ({
  text: phrase`${text}: common practice, no published source`,
  status: 'practice',
});

/** The spacings and lengths of counting that sources speak of, by their names in a document. */
export type CountingSetting =
  | 'bandSpacing'
  | 'bandInset'
  | 'postTies'
  | 'railTies'
  | 'hogRings'
  | 'barShort'
  | 'railStick'
  | 'railJoint'
  | 'lumber'
  | 'roll'
  | 'kerf';

/** Who says so, setting by setting; where sources disagree the others as well. */
export const countingSources: Readonly<
  Record<CountingSetting, readonly { readonly value: string; readonly source: Source }[]>
> = {
  bandSpacing: [
    { value: '15 in', source: published('UFGS-02821A 3.7') },
    { value: '12 in', source: published('Caltrans 80-3.03') },
  ],
  bandInset: [{ value: '9 in', source: practice(phrase`one band fewer than feet of height`) }],
  postTies: [
    { value: '15 in', source: published(phrase`UFGS-02821A 3.7; Byesville OH fence code`) },
    { value: '14 in', source: published('Caltrans 80-3.03') },
  ],
  railTies: [
    { value: '24 in', source: published(phrase`UFGS-02821A 3.7; Byesville OH fence code`) },
    { value: '18 in', source: published('Caltrans 80-3.03') },
  ],
  hogRings: [{ value: '24 in', source: memory('ASTM F567') }],
  barShort: [{ value: '2 in', source: practice(phrase`a bar 2 in shorter than its fabric`) }],
  railStick: [{ value: '21 ft', source: memory(phrase`ASTM F567 and F626, CLFMI`) }],
  railJoint: [
    {
      value: phrase`swaged or sleeved`,
      source: published(phrase`Byesville OH fence code: swedged or sleeved`),
    },
  ],
  lumber: [{ value: '16 ft', source: practice(phrase`the length that two bays of 8 ft take`) }],
  roll: [{ value: '50 ft', source: memory('ASTM A392 standard roll') }],
  kerf: [{ value: '1/8 in', source: practice(phrase`what a chop saw takes`) }],
};
