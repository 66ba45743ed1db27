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

interface Props {
  readonly spec: FenceSpec;
  readonly style: LengthStyle;
  readonly change: (label: string, fields: Partial<FenceSpec>) => string | null;
}

const posts = [
  { key: 'linePost', label: 'Line posts' },
  { key: 'terminalPost', label: 'Terminal posts' },
  { key: 'gatePost', label: 'Gate posts' },
] as const;

const rails = [
  { key: 'topRail', label: 'Top rail' },
  { key: 'middleRail', label: 'Middle rail' },
  { key: 'bottomRail', label: 'Bottom rail' },
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
    {posts.map(({ key, label }) => (
      <PipeField
        key={key}
        label={label}
        pipe={spec[key]}
        from={postStock}
        onChoose={(pipe) =>
          pipe !== null && change(`Change ${label.toLowerCase()}`, { [key]: pipe })
        }
      />
    ))}
    <PipeNote />
    {isWoven(spec) && (
      <Published
        of="posts by height"
        as="rows"
        figures={postSizes.map((row) => ({
          text: `up to ${formatLength(row.upTo, style)}: line ${pipeSize(row.line.od, style)}, terminal ${pipeSize(row.terminal.od, style)}`,
          source: row.source,
          used: isRow(spec, row),
          onTake: () => void change('Take posts by height', fromRow(row)),
        }))}
      />
    )}
    {(isWoven(spec) ? rails : []).map(({ key, label }) => (
      <PipeField
        key={key}
        label={label}
        pipe={spec[key]}
        none="None"
        from={pipeStock}
        onChoose={(pipe) => void change(`Change ${label.toLowerCase()}`, { [key]: pipe })}
      />
    ))}
  </div>
);
