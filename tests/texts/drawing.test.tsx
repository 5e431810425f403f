/** What a drawing and a chart say in German. */

import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { drawingSvg } from '../../src/screens/drawing/drawing-svg.ts';
import { drawingWords } from '../../src/screens/drawing/drawing-words.ts';
import { ControlChart } from '../../src/screens/plots/ControlChart.tsx';
import { ToleranceBar } from '../../src/screens/plots/ToleranceBar.tsx';
import { LanguageOfPage } from '../../src/screens/use-say.ts';
import { german } from '../../src/texts/de/index.ts';
import { HINGE_PIN } from '../screens/drawing/parts.ts';

const englishWords =
  /\b(?:deep|within|rework|lost|mean|range|reading|measured|drawing|done|now|outside|subgroup|to)\b/i;

/** Texts of a picture, without its marks. */
function textsOf(svg: string): string {
  return svg.replace(/<[^>]*>/g, ' ');
}

function inGerman(chart: Parameters<typeof render>[0]): string {
  return textsOf(render(<LanguageOfPage.Provider value={german}>{chart}</LanguageOfPage.Provider>));
}

describe('in German', () => {
  it('a drawing names depths and verdicts, and writes decimals with a comma', () => {
    const state = {
      shank: { state: 'done', reading: { value: 24.45, verdict: 'within' } },
    } as const;
    const told = textsOf(
      drawingSvg(HINGE_PIN, state, { words: drawingWords(german), title: 'Bolzen' }),
    );
    expect(told).toContain('24,45 im Maß');
    expect(told).toContain('noch nicht geschnitten');
    expect(told).not.toMatch(englishWords);
    expect(told).not.toMatch(/\d\.\d/);
  });

  it('a bar of limits takes its words from the page', () => {
    const told = inGerman(
      <ToleranceBar
        title="Maß"
        lower={23.9}
        upper={24}
        side="outside"
        reading={23.95}
        verdict="within"
      />,
    );
    expect(told).toContain('23,95 im Maß');
    expect(told).toContain('Ausschuss');
    expect(told).not.toMatch(englishWords);
  });

  it('a control chart does, also where it cannot be drawn', () => {
    const groups = [
      [9, 10.5],
      [10, 11],
      [9.5, 10],
    ];
    const told = inGerman(<ControlChart title="Maße" subgroups={groups} />);
    expect(told).toContain('Mittelwert');
    expect(told).not.toMatch(englishWords);
    expect(inGerman(<ControlChart title="Maße" subgroups={[[9, 10], [9]]} />)).toContain(
      'Stichprobe 2 hat 1 Messwerte, die erste 2',
    );
  });
});
