import type { Site } from '../../../site/site.ts';
import type { Selection } from '../../../store/selection.ts';
import { FeatureCard } from './FeatureCard.tsx';
import { featureName } from '../../../site/featureName.ts';
import { GateCard } from './GateCard.tsx';
import { LegCard } from './LegCard.tsx';
import { LineCard } from './LineCard.tsx';
import { MarkCard } from './MarkCard.tsx';
import { PinCard } from './PinCard.tsx';
import { PostCard } from './PostCard.tsx';
import { ShotCard } from './ShotCard.tsx';
import { UnderlayCard } from '../underlay/UnderlayCard.tsx';
import { TapeCard } from './TapeCard.tsx';
import { phrase } from '../../../phrases/phrase.ts';

const kindNames = {
  line: phrase`Fence line`,
  leg: phrase`Leg`,
  gate: phrase`Gate`,
  mark: phrase`Mark`,
  post: phrase`Post`,
  pin: phrase`Ground kept clear`,
  shot: phrase`Grade shot`,
  tape: phrase`Tape`,
  underlay: phrase`Picture`,
} as const;

const labelOf = (selection: NonNullable<Selection>, site: Site): string | undefined => {
  if (selection.kind === 'line') return site.lines[selection.id]?.label;
  if (selection.kind === 'leg') return site.lines[selection.line]?.label;
  if (selection.kind === 'gate') return site.gates[selection.id]?.label;
  if (selection.kind === 'mark') return site.marks[selection.id]?.label;
  if (selection.kind === 'shot') return site.shots[selection.id]?.label;
  if (selection.kind === 'post' || selection.kind === 'pin') return undefined;
  if (selection.kind === 'underlay') return site.underlays[selection.id]?.label;
  if (selection.kind === 'tape') return site.observations[selection.id]?.label;
  return site.features[selection.id]?.label;
};

const kindOf = (selection: NonNullable<Selection>, site: Site): string => {
  if (selection.kind === 'feature') return phrase`Feature`;
  const seen = selection.kind === 'tape' ? site.observations[selection.id] : undefined;
  return seen === undefined || seen.kind === 'tape' ? kindNames[selection.kind] : phrase`Reading`;
};

/** What a selected thing is called: its kind, and its own name where it has one. */
export const cardTitle = (selection: NonNullable<Selection>, site: Site): string => {
  const feature = selection.kind === 'feature' ? site.features[selection.id] : undefined;
  const kind = kindOf(selection, site);
  const name = labelOf(selection, site) ?? '';
  const said = feature === undefined ? kind : featureName(feature);
  return name === '' ? said : `${said}: ${name}`;
};

/** The card of the selected thing, with every value that can be changed. */
export const Card = ({ selection }: { readonly selection: NonNullable<Selection> }) => {
  switch (selection.kind) {
    case 'line':
      return <LineCard key={selection.id} id={selection.id} />;
    case 'leg':
      return <LegCard key={selection.id} line={selection.line} id={selection.id} />;
    case 'gate':
      return <GateCard key={selection.id} id={selection.id} />;
    case 'mark':
      return <MarkCard key={selection.id} id={selection.id} />;
    case 'post':
      return <PostCard key={selection.id} id={selection.id} />;
    case 'pin':
      return <PinCard key={selection.id} id={selection.id} />;
    case 'shot':
      return <ShotCard key={selection.id} id={selection.id} />;
    case 'tape':
      return <TapeCard key={selection.id} id={selection.id} />;
    case 'underlay':
      return <UnderlayCard key={selection.id} id={selection.id} />;
    case 'feature':
      return <FeatureCard key={selection.id} id={selection.id} />;
  }
};
