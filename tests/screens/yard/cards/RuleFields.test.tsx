import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { Published } from '../../../../src/screens/yard/cards/Published.tsx';
import { BuildFigures } from '../../../../src/screens/yard/cards/BuildFigures.tsx';
import { RuleFields } from '../../../../src/screens/yard/cards/RuleFields.tsx';
import type { FenceSpec } from '../../../../src/site/fenceSpec.ts';
import type { Source } from '../../../../src/trade/source.ts';
import { cornerAngles } from '../../../../src/trade/cornerAngles.ts';
import { curveSpacingSource } from '../../../../src/trade/curveSpacing.ts';
import { pullGrades, pullIntervals } from '../../../../src/trade/pullPosts.ts';
import { inches } from '../../../../src/units/inches.ts';
import { spec } from '../../../engine/plainYard.ts';

const fields = (changed: Partial<FenceSpec>): string =>
  renderToStaticMarkup(
    <RuleFields
      spec={{ ...spec, ...changed }}
      style={{ system: 'feet', fraction: 16 }}
      small="inches"
      change={() => null}
    />,
  );

const source: Source = { text: 'A standard, 4.2', status: 'published' };

describe('Published', () => {
  const figure = (text: string, used: boolean) => ({ text, source, used, onTake: () => undefined });

  it('says that sources disagree only where there are several, and which figure is taken', () => {
    const several = renderToStaticMarkup(
      <Published of="a rule" figures={[figure('5', false), figure('15', true)]} />,
    );
    expect(several).toContain('The sources disagree');
    expect(several).toMatch(/aria-pressed="false"[^>]*><b>5<.*aria-pressed="true"[^>]*><b>15</);
    const one = renderToStaticMarkup(<Published of="a rule" figures={[figure('5', true)]} />);
    expect(one).not.toContain('disagree');
  });
});

describe('RuleFields', () => {
  it('shows every published figure of every rule with its source', () => {
    const markup = fields({});
    const sources = [cornerAngles, pullIntervals, pullGrades].flat().map((row) => row.source.text);
    expect(sources.length).toBeGreaterThan(5);
    for (const text of [...sources, curveSpacingSource.text]) {
      expect(markup).toContain(text.replaceAll('&', '&amp;').replaceAll('>', '&gt;'));
    }
  });

  it('leaves empty what is not known, and shows it once it is', () => {
    const toe = (markup: string) => /Foundations reach out.*?value="([^"]*)"/.exec(markup)?.[1];
    expect(toe(fields({}))).toBe('');
    expect(toe(fields({ foundationToe: inches(6) }))).toBe('6&quot;');
    expect(fields({ onCurves: 'as straight' })).toMatch(/value="as straight" selected=""/);
  });
});

describe('BuildFigures', () => {
  it('presses the post tops that the build has, and of bays the one that is its longest', () => {
    const markup = (changed: Partial<FenceSpec>): string =>
      renderToStaticMarkup(
        <BuildFigures
          spec={{ ...spec, ...changed }}
          style={{ system: 'feet', fraction: 16 }}
          change={() => null}
        />,
      );
    const pressed = (text: string) => text.split('aria-pressed="true"').slice(1);
    expect(pressed(markup({})).map((part) => /<b>(.*?)<\/b>/.exec(part)?.[1])).toEqual([
      '10&#x27;-0&quot;',
      '2&quot; and -2&quot; over the fabric',
    ]);
    expect(pressed(markup({ maxBay: inches(100), lineAbove: inches(0) }))).toEqual([]);
  });
});
