import { roundPx } from '../labelBox';
import { paperPalette } from '../windsEye/pictureSvg';
import { ringPx, type ChartMark, type CurveChartGeometry, type MarkRole } from './curveChartTypes';

const { ink, muted, rule, hairline, cost, saving, paper } = paperPalette;
/** As in src/app/tokens.css, on white. */
const outside = '#7a1260';

const line = (stroke: string, width: number): string =>
  `fill="none" stroke="${stroke}" stroke-width="${width}"`;
const area = (fill: string, opacity: number): string => `fill="${fill}" fill-opacity="${opacity}"`;
const words = (fill: string, size: number): string => `fill="${fill}" font-size="${size}"`;

/** The looks of curveChart.css on white paper. */
const looks: Readonly<Record<MarkRole, string>> = {
  grid: line(hairline, 1),
  axis: line(rule, 1),
  tick: words(muted, 11.5),
  note: words(muted, 11.5),
  band: area(ink, 0.09),
  saves: area(saving, 0.16),
  costs: area(cost, 0.18),
  flat: area(saving, 0.16),
  warning: area(outside, 0.14),
  bare: line(cost, 2),
  chosen: line(saving, 2),
  other: line(ink, 1.2),
  now: line(ink, 1),
  spread: line(ink, 1),
  ring: `fill="${paper}" stroke="${ink}" stroke-width="1.4"`,
  label: words(ink, 12),
  bareLabel: words(cost, 12),
  chosenLabel: words(saving, 12),
};

const linePx = 16;
const sidePx = 12;

/** A chart as a file: one SVG with its title and date, without scripts, styles or addresses of anything. */
export function curveSvg(
  { widthPx, heightPx, marks }: CurveChartGeometry,
  titleLines: readonly string[],
  noteLines: readonly string[],
): string {
  const topPx = titleLines.length * linePx + sidePx;
  const fullPx = topPx + heightPx + (noteLines.length + 1) * linePx;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${widthPx}" height="${fullPx}" viewBox="0 0 ${widthPx} ${fullPx}" font-family="'Source Sans 3', 'Helvetica Neue', Arial, sans-serif" font-size="12">`,
    `<title>${escaped(titleLines.join('. '))}</title>`,
    `<rect width="${widthPx}" height="${fullPx}" fill="${paper}"/>`,
    ...titleLines.map((each, i) => textLine(each, (i + 1) * linePx, i === 0)),
    `<g transform="translate(0 ${topPx})">`,
    ...marks.map(markSvg),
    '</g>',
    ...noteLines.map((each, i) => textLine(each, topPx + heightPx + (i + 1) * linePx, false)),
    '</svg>',
    '',
  ].join('\n');
}

function escaped(text: string): string {
  const signs: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
  // Control characters have no place in XML, escaped or not.
  return text
    .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, '')
    .replace(/[&<>"]/g, (sign) => signs[sign] ?? '');
}

function textLine(text: string, y: number, isBold: boolean): string {
  const weight = isBold ? ' font-weight="600"' : '';
  return `<text x="${sidePx}" y="${y}" fill="${ink}"${weight}>${escaped(text)}</text>`;
}

function markSvg(mark: ChartMark): string {
  const look = looks[mark.role];
  switch (mark.kind) {
    case 'path': {
      const dash = mark.dash === undefined ? '' : ` stroke-dasharray="${mark.dash}"`;
      return `<path d="${mark.d}" ${look}${dash}/>`;
    }
    case 'ring':
      return `<circle cx="${mark.x}" cy="${mark.y}" r="${ringPx}" ${look}/>`;
    case 'text':
      return `<text x="${roundPx(mark.x)}" y="${roundPx(mark.y)}" text-anchor="${mark.anchor}" ${look}>${escaped(mark.text)}</text>`;
  }
}
