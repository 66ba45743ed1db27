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
import { phrase } from '../../../phrases/phrase.ts';

const ways = [
  { value: 'follow', label: phrase`Follows the grade` },
  { value: 'step', label: phrase`Steps, each panel level` },
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
    return (
      <p className="note">{phrase`The shots do not reach this leg: its ground is not known.`}</p>
    );
  }
  const rise = inches(last.to.z - first.from.z);
  const size = formatLength(inches(Math.abs(rise)), lengths);
  const rises =
    rise < 0
      ? phrase`Falls ${size} from its start to its end`
      : phrase`Rises ${size} from its start to its end`;
  const told = profile.unknown.length > 0 ? phrase`${rises}, as far as the shots reach` : rises;
  const grade = gradeText(Math.abs(steepest.grade));
  return (
    <p className="note">
      {steepest.grade < 0
        ? phrase`${told}; steepest ${grade} down.`
        : phrase`${told}; steepest ${grade} up.`}
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
        label={phrase`Fabric`}
        value={stepped ? 'step' : 'follow'}
        choices={ways}
        onChoose={(grade) =>
          make(phrase`Change how fabric meets the grade`, (was) =>
            setLegGrade(was, line, leg.id, grade),
          )
        }
      />
      <Rise leg={leg} />
    </>
  );
};
