import { memo } from 'react';
import { tintShare, type TintScale } from '../../charts/windsEye/tints';
import type { PictureMeaning } from '../../charts/windsEye/paints';
import { formatValue, printUnit } from '../../units/print';
import { measureLabels, type MeasureId, type PictureSide } from './pictureModel';

interface PictureLegendProps {
  readonly meaning: PictureMeaning;
  readonly measure: MeasureId;
  readonly side: PictureSide;
  readonly hasPlan: boolean;
}

/** What the tints and lines say, with units. */
export const PictureLegend = memo(function PictureLegend(props: PictureLegendProps) {
  const { meaning, measure, side, hasPlan } = props;
  const { scale, hue } = meaning;
  return (
    <div className="picture-legend">
      <span className="muted">
        {measureLabels[measure]}, {printUnit(unitOf(measure))}
      </span>
      <ol className="picture-tints">
        {tintTexts(scale, measure).map((text, step) => (
          <li key={step}>
            <svg width="26" height="10" viewBox="0 0 26 10" aria-hidden="true">
              <rect
                x={0.5}
                y={0.5}
                width={25}
                height={9}
                className={`picture-tint picture-tint-${hue}`}
                fillOpacity={tintShare(step, scale.steps)}
              />
            </svg>
            {text}
          </li>
        ))}
      </ol>
      <p className="fine">{lineWords(side, hasPlan).join('; ')}.</p>
    </div>
  );
});

function unitOf(measure: MeasureId): 'm2' | 'W' {
  return measure === 'dragArea' ? 'm2' : 'W';
}

function tintTexts({ ends }: TintScale, measure: MeasureId): string[] {
  const printed = ends.map((end) => formatValue(end, unitOf(measure)));
  return [
    `up to ${printed[0] ?? ''}`,
    ...printed.slice(1).map((end) => `to ${end}`),
    `over ${printed.at(-1) ?? ''}`,
  ];
}

/** The lines in words; also for the picture's file. */
export function lineWords(side: PictureSide, hasPlan: boolean): readonly string[] {
  return [
    'dotted: pushes the boat along, or only a drag area is known',
    'dashed: not in the wind',
    ...(hasPlan && side === 'after' ? ['cased: changed by the plan'] : []),
    'sails and mast are sketched',
  ];
}

/** The tints in words, for the picture's file. */
export function tintWords({ scale }: PictureMeaning, measure: MeasureId): string {
  return `${measureLabels[measure]}, ${printUnit(unitOf(measure))}, light to dark: ${tintTexts(scale, measure).join(', ')}`;
}
