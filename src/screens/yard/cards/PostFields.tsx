import { isWoven } from '../../../site/isWoven.ts';
import type { FenceSpec } from '../../../site/fenceSpec.ts';
import type { Pipe } from '../../../site/pipe.ts';
import { roundPost } from '../../../site/roundPost.ts';
import { postSizes, type PostSizes } from '../../../trade/fencePosts.ts';
import { formatLength } from '../../../units/formatLength.ts';
import type { LengthStyle } from '../../../units/lengthStyle.ts';
import { pipeSize } from '../../../units/pipeSize.ts';
import { PipeField, PipeNote } from '../../fields/PipeField.tsx';
import { pipeStock, postStock } from '../../fields/stock.ts';
import { Published } from './Published.tsx';
import { phrase } from '../../../phrases/phrase.ts';

interface Props {
  readonly spec: FenceSpec;
  readonly style: LengthStyle;
  readonly change: (label: string, fields: Partial<FenceSpec>) => string | null;
}

const posts = [
  { key: 'linePost', label: phrase`Line posts`, edit: phrase`Change line posts` },
  { key: 'terminalPost', label: phrase`Terminal posts`, edit: phrase`Change terminal posts` },
  { key: 'gatePost', label: phrase`Gate posts`, edit: phrase`Change gate posts` },
] as const;

const rails = [
  { key: 'topRail', label: phrase`Top rail`, edit: phrase`Change top rail` },
  { key: 'middleRail', label: phrase`Middle rail`, edit: phrase`Change middle rail` },
  { key: 'bottomRail', label: phrase`Bottom rail`, edit: phrase`Change bottom rail` },
] as const;

const bare = ({ label, od, wall }: Pipe): Pipe => ({ label, od, wall });

const fromRow = ({ line, terminal, topRail }: PostSizes): Partial<FenceSpec> => ({
  linePost: roundPost(line),
  terminalPost: roundPost(terminal),
  topRail: bare(topRail),
});

const isRow = (spec: FenceSpec, { line, terminal }: PostSizes): boolean =>
  spec.linePost.od === line.od && spec.terminalPost.od === terminal.od;

/** What posts and rails of a build are made of, with what is published of posts by height. */
export const PostFields = ({ spec, style, change }: Props) => (
  <div className="stack">
    {posts.map(({ key, label, edit }) => (
      <PipeField
        key={key}
        label={label}
        pipe={spec[key]}
        from={postStock}
        onChoose={(pipe) => pipe !== null && change(edit, { [key]: pipe })}
      />
    ))}
    <PipeNote />
    {isWoven(spec) && (
      <Published
        of={phrase`posts by height`}
        as="rows"
        figures={postSizes.map((row) => ({
          text: phrase`up to ${formatLength(row.upTo, style)}: line ${pipeSize(row.line.od, style)}, terminal ${pipeSize(row.terminal.od, style)}`,
          source: row.source,
          used: isRow(spec, row),
          onTake: () => void change(phrase`Take posts by height`, fromRow(row)),
        }))}
      />
    )}
    {(isWoven(spec) ? rails : []).map(({ key, label, edit }) => (
      <PipeField
        key={key}
        label={label}
        pipe={spec[key]}
        none={phrase`None`}
        from={pipeStock}
        onChoose={(pipe) => void change(edit, { [key]: pipe })}
      />
    ))}
  </div>
);
