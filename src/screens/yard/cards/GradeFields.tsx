import { partsOf } from '../../../engine/ground/profile.ts';
import { profileAlong } from '../../../engine/ground/profileAlong.ts';
import { steepestPart } from '../../../engine/ground/steepestPart.ts';
import type { Leg } from '../../../engine/layout.ts';
import { setLegGrade } from '../../../site/edits/setLegGrade.ts';
import type { LineId } from '../../../site/ids.ts';
import { formatLength } from '../../../units/formatLength.ts';
import { inches } from '../../../units/inches.ts';
import { useLayout, useSite } from '../../bench.ts';
import { trackPoints } from '../../../geometry/track.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { gradeText } from './readGrade.ts';
import { useDo } from './useEdit.ts';

const ways = [
  { value: 'follow', label: 'Follows the grade' },
  { value: 'step', label: 'Steps, each panel level' },
] as const;

/** How the ground under a leg rises, as far as the shots tell. */
const Rise = ({ leg }: { readonly leg: Leg }) => {
  const { lengths } = useSite();
  const { ground } = useLayout();
  if (ground === null) return null;
  const profile = profileAlong(ground, trackPoints(leg, 1 / 64));
  const steepest = steepestPart(profile);
  const known = partsOf(profile);
  const [first, last] = [known[0], known.at(-1)];
  if (steepest === null || first === undefined || last === undefined) {
    return <p className="note">The shots do not reach this leg: its ground is not known.</p>;
  }
  const rise = inches(last.to.z - first.from.z);
  const way = rise < 0 ? 'Falls' : 'Rises';
  return (
    <p className="note">
      {way} {formatLength(inches(Math.abs(rise)), lengths)} from its start to its end
      {profile.unknown.length > 0 && ', as far as the shots reach'}; steepest{' '}
      {gradeText(Math.abs(steepest.grade))} {steepest.grade < 0 ? 'down' : 'up'}.
    </p>
  );
};

/** Whether the fabric of a leg follows the grade, and how steep that is. */
export const GradeFields = ({ line, leg }: { readonly line: LineId; readonly leg: Leg }) => {
  const stepped = useSite().lines[line]?.stepped[leg.id] === true;
  const make = useDo();
  return (
    <>
      <ChoiceField
        label="Fabric"
        value={stepped ? 'step' : 'follow'}
        choices={ways}
        onChoose={(grade) =>
          make('Change how fabric meets the grade', (was) => setLegGrade(was, line, leg.id, grade))
        }
      />
      <Rise leg={leg} />
    </>
  );
};
