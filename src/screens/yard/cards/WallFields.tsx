import type { Leg } from '../../../engine/layout.ts';
import { setLegWall } from '../../../site/edits/setLegWall.ts';
import type { LineId } from '../../../site/ids.ts';
import type { WallTop } from '../../../site/wallTop.ts';
import { coreDepth, coreRoom, plateSide } from '../../../trade/wallSets.ts';
import { inches } from '../../../units/inches.ts';
import { quotedText } from '../../../units/quotedText.ts';
import { useSite } from '../../bench.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { LengthField } from '../../fields/LengthField.tsx';
import { TextField } from '../../fields/TextField.tsx';
import { smallUnit } from '../../fields/smallUnit.ts';
import { useDo, useEdit } from './useEdit.ts';
import { phrase } from '../../../phrases/phrase.ts';

const grounds = [
  { value: 'ground', label: phrase`The ground` },
  { value: 'cored', label: phrase`A wall or kerb, posts in drilled cores` },
  { value: 'plate', label: phrase`A wall or kerb, posts on plates` },
] as const;

type On = (typeof grounds)[number]['value'];

const sets: Readonly<Record<Exclude<On, 'ground'>, WallTop['set']>> = {
  cored: { kind: 'cored', depth: coreDepth.length, room: coreRoom.length },
  plate: { kind: 'plate', side: plateSide.length },
};

/** A wall as it is taken to be until somebody measures it. */
const firstWall = { width: inches(12), height: inches(24), rise: inches(0), steps: 0 } as const;

const onto = (was: WallTop | undefined, on: On): WallTop | null =>
  on === 'ground' ? null : { ...(was ?? firstWall), set: sets[on] };

const mostSteps = 200;

/** How many steps were typed; else one line that says why not. */
const readSteps = (text: string): number | string => {
  const steps = text.trim() === '' ? 0 : Number(text);
  return Number.isInteger(steps) && steps >= 0 && steps <= mostSteps
    ? steps
    : phrase`Steps ${quotedText(text)}: expected a whole number from 0 to ${mostSteps}`;
};

interface SizesProps {
  readonly wall: WallTop;
  readonly change: (wall: WallTop) => string | null;
}

const SetFields = ({ wall, change }: SizesProps) => {
  const { lengths } = useSite();
  const small = { style: lengths, bare: smallUnit(lengths.system) };
  const { set } = wall;
  if (set.kind === 'plate') {
    return (
      <LengthField
        {...small}
        label={phrase`Plate, a side`}
        value={set.side}
        note={plateSide.source.text}
        onEnter={(side) => change({ ...wall, set: { ...set, side } })}
      />
    );
  }
  return (
    <>
      <div className="pair">
        <LengthField
          {...small}
          label={phrase`Depth of core`}
          value={set.depth}
          onEnter={(depth) => change({ ...wall, set: { ...set, depth } })}
        />
        <LengthField
          {...small}
          label={phrase`Wider than post`}
          value={set.room}
          onEnter={(room) => change({ ...wall, set: { ...set, room } })}
        />
      </div>
      <p className="note">{coreDepth.source.text}.</p>
    </>
  );
};

const WallSizes = ({ wall, change }: SizesProps) => {
  const { lengths } = useSite();
  const small = { style: lengths, bare: smallUnit(lengths.system) };
  return (
    <>
      <div className="pair">
        <LengthField
          {...small}
          label={phrase`Width of wall`}
          value={wall.width}
          onEnter={(width) => change({ ...wall, width })}
        />
        <LengthField
          {...small}
          label={phrase`Height of wall`}
          value={wall.height}
          onEnter={(height) => change({ ...wall, height })}
        />
      </div>
      <div className="pair">
        <LengthField
          {...small}
          label={phrase`Top rises by`}
          value={wall.rise}
          onEnter={(rise) => change({ ...wall, rise })}
        />
        <TextField
          label={phrase`In steps`}
          keys="decimal"
          value={String(wall.steps)}
          onEnter={(text) => {
            const steps = readSteps(text);
            return typeof steps === 'string' ? steps : change({ ...wall, steps });
          }}
        />
      </div>
      <p className="note">
        {phrase`Height over the ground where it is least; from the start of the leg to its end the top rises in equal steps, or slopes where there are 0.`}
      </p>
    </>
  );
};

/** What a leg stands on: the ground, or the top of a wall or kerb and how posts are set on that. */
export const WallFields = ({ line, leg }: { readonly line: LineId; readonly leg: Leg }) => {
  const wall = useSite().lines[line]?.walls[leg.id];
  const edit = useEdit();
  const make = useDo();
  const change = (next: WallTop) =>
    edit(phrase`Change wall`, (was) => setLegWall(was, { line, leg: leg.id, wall: next }));
  return (
    <>
      <ChoiceField
        label={phrase`Stands on`}
        value={wall === undefined ? 'ground' : wall.set.kind}
        choices={grounds}
        onChoose={(on) =>
          make(phrase`Change what a leg stands on`, (was) =>
            setLegWall(was, { line, leg: leg.id, wall: onto(wall, on) }),
          )
        }
      />
      {wall !== undefined && (
        <>
          <WallSizes wall={wall} change={change} />
          <SetFields wall={wall} change={change} />
        </>
      )}
    </>
  );
};
