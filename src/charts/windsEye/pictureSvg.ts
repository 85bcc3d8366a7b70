import type { Callout } from './callouts';
import type { PlanePoint } from './convexHull';
import { heightMarks } from './frameOf';
import { paintOf, type Paint, type Palette, type PictureMeaning } from './paints';
import type { PictureFrame, SceneItem } from './scene';
import { roundPx } from '../labelBox';

/** Everything that a picture for a file is made of. */
export interface PictureSheet {
  readonly items: readonly SceneItem[];
  readonly callouts: readonly Callout[];
  readonly meaning: PictureMeaning;
  readonly frame: PictureFrame;
  /** True in the views along the water, which have heights. */
  readonly hasHeights: boolean;
  /** Lines above the picture: what it shows, the condition, the date. */
  readonly titleLines: readonly string[];
  /** Lines below it: what the tints mean. */
  readonly legendLines: readonly string[];
}

/** The colours of a picture on white paper, as in src/app/tokens.css. */
export const paperPalette: Palette = {
  paper: '#ffffff',
  ink: '#16212b',
  muted: '#56626a',
  rule: '#838d89',
  hairline: '#ccd2cb',
  cost: '#b8401f',
  saving: '#2a67bd',
};

const lineHeightPx = 16;
const sidePx = 12;

/** The picture as a file: one SVG with its title, without scripts, styles or addresses of anything. */
export function pictureSvg({
  items,
  callouts,
  meaning,
  frame,
  hasHeights,
  titleLines,
  legendLines,
}: PictureSheet): string {
  const topPx = titleLines.length * lineHeightPx + sidePx;
  const heightPx = topPx + frame.heightPx + (legendLines.length + 1) * lineHeightPx;
  const legendY = topPx + frame.heightPx + lineHeightPx;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${frame.widthPx}" height="${heightPx}" viewBox="0 0 ${frame.widthPx} ${heightPx}" font-family="'Source Sans 3', 'Helvetica Neue', Arial, sans-serif" font-size="12">`,
    `<title>${escaped(titleLines.join('. '))}</title>`,
    `<rect width="${frame.widthPx}" height="${heightPx}" fill="${paperPalette.paper}"/>`,
    ...titleLines.map((line, i) => text(line, sidePx, (i + 1) * lineHeightPx, i === 0 ? 'bold' : '')),
    `<g transform="translate(0 ${topPx})">`,
    ...(hasHeights ? heightLines(frame) : []),
    ...items.flatMap((item) => drawn(item, paintOf(item, meaning, paperPalette))),
    ...callouts.flatMap(calloutMarks),
    '</g>',
    ...legendLines.map((line, i) => text(line, sidePx, legendY + i * lineHeightPx, '')),
    '</svg>',
    '',
  ].join('\n');
}

function escaped(words: string): string {
  const signs: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
  // Control characters have no place in XML, escaped or not.
  return words
    .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, '')
    .replace(/[&<>"]/g, (sign) => signs[sign] ?? '');
}

function text(words: string, x: number, y: number, look: 'bold' | 'end' | ''): string {
  const extra = look === 'bold' ? ' font-weight="600"' : look === 'end' ? ' text-anchor="end"' : '';
  return `<text x="${roundPx(x)}" y="${roundPx(y)}" fill="${paperPalette.ink}"${extra}>${escaped(words)}</text>`;
}

function heightLines(frame: PictureFrame): string[] {
  return heightMarks(frame).flatMap((heightM) => {
    const y = roundPx(frame.originY - heightM * frame.pxPerM);
    const stroke = heightM === 0 ? paperPalette.rule : paperPalette.hairline;
    return [
      `<line x1="30" x2="${frame.widthPx}" y1="${y}" y2="${y}" stroke="${stroke}"/>`,
      text(heightM === 0 ? '0 m' : String(heightM), 26, y + 4, 'end'),
    ];
  });
}

/** Corners as the data of a path, to a hundredth of a pixel. */
function pathOf(corners: readonly PlanePoint[], isClosed: boolean): string {
  const points = corners.map(([x, y]) => `${roundPx(x)} ${roundPx(y)}`).join('L');
  return `M${points}${isClosed ? 'Z' : ''}`;
}

function drawn(item: SceneItem, { fill, stroke, widthPx, dash, casing }: Paint): string[] {
  const d = pathOf(item.corners, item.strokePx === 0);
  const dashes = dash.length === 0 ? '' : ` stroke-dasharray="${dash.join(' ')}"`;
  return [
    ...(casing === null
      ? []
      : [
          `<path d="${d}" fill="none" stroke="${casing.stroke}" stroke-width="${roundPx(casing.widthPx)}" stroke-linejoin="round"/>`,
        ]),
    `<path d="${d}" fill="${fill ?? 'none'}" stroke="${stroke}" stroke-width="${roundPx(widthPx)}"${dashes}/>`,
  ];
}

function calloutMarks({ shownName, value, x, y, anchor, line }: Callout): string[] {
  const [[x1, y1], [x2, y2]] = line;
  const end = anchor === 'end' ? 'end' : '';
  return [
    `<path d="${pathOf(
      [
        [x1, y1],
        [x2, y2],
      ],
      false,
    )}" fill="none" stroke="${paperPalette.ink}" stroke-width="0.75"/>`,
    `<circle cx="${roundPx(x2)}" cy="${roundPx(y2)}" r="1.8" fill="${paperPalette.ink}"/>`,
    text(shownName, x, y, end),
    text(value, x, y + 14, end),
  ];
}
