import { heightMarks } from '../../charts/windsEye/frameOf';
import { paintOf, type Palette, type Paint, type PictureMeaning } from '../../charts/windsEye/paints';
import type { PictureFrame, SceneItem } from '../../charts/windsEye/scene';

/** What is drawn on the canvas. */
export interface CanvasPicture {
  readonly items: readonly SceneItem[];
  readonly meaning: PictureMeaning;
  readonly frame: PictureFrame;
  readonly hasHeights: boolean;
  readonly selectedId: string | null;
  readonly hoveredId: string | null;
}

const tokens = ['paper', 'ink', 'muted', 'rule', 'hairline', 'cost', 'saving'] as const;

let knownPalette: { readonly isDark: boolean; readonly palette: Palette } | null = null;

/** The page's colours, light or dark: asking for them makes the browser work out all styles, so they are remembered. */
export function paletteOf(element: Element, isDark: boolean): Palette {
  if (knownPalette?.isDark !== isDark) knownPalette = { isDark, palette: readPalette(element) };
  return knownPalette.palette;
}

function readPalette(element: Element): Palette {
  const style = getComputedStyle(element);
  const entries = tokens.map((token) => [token, style.getPropertyValue(`--${token}`).trim()] as const);
  return Object.fromEntries(entries) as Record<(typeof tokens)[number], string>;
}

/** Draws far to near, the selected fitting's edge last. Its texts stand in the overlay. */
export function paintCanvas(canvas: HTMLCanvasElement, picture: CanvasPicture, palette: Palette): void {
  const context = canvas.getContext('2d');
  if (context === null) return;
  const { frame, items } = picture;
  const scale = window.devicePixelRatio;
  setSize(canvas, frame, scale);
  context.setTransform(scale, 0, 0, scale, 0, 0);
  context.clearRect(0, 0, frame.widthPx, frame.heightPx);
  context.lineJoin = 'round';
  if (picture.hasHeights) drawHeights(context, frame, palette);
  for (const item of items) {
    trace(context, item);
    fillAndStroke(context, paintOf(item, picture.meaning, palette));
  }
  drawEdges(context, picture, picture.hoveredId, palette, 1.5);
  drawEdges(context, picture, picture.selectedId, palette, 2.5);
}

/** A canvas that is given its size anew loses everything and costs a frame. */
function setSize(canvas: HTMLCanvasElement, { widthPx, heightPx }: PictureFrame, scale: number): void {
  const [width, height] = [Math.round(widthPx * scale), Math.round(heightPx * scale)];
  if (canvas.width !== width) canvas.width = width;
  if (canvas.height !== height) canvas.height = height;
}

function trace(context: CanvasRenderingContext2D, { corners, strokePx }: SceneItem): void {
  context.beginPath();
  // The first line of a path only moves there.
  for (const [x, y] of corners) context.lineTo(x, y);
  if (strokePx === 0) context.closePath();
}

function fillAndStroke(
  context: CanvasRenderingContext2D,
  { fill, stroke, widthPx, dash, casing }: Paint,
): void {
  if (casing !== null) {
    context.setLineDash([]);
    context.strokeStyle = casing.stroke;
    context.lineWidth = casing.widthPx;
    context.stroke();
  }
  if (fill !== null) {
    context.fillStyle = fill;
    context.fill();
  }
  context.setLineDash(dash as number[]);
  context.strokeStyle = stroke;
  context.lineWidth = widthPx;
  context.stroke();
}

function drawHeights(context: CanvasRenderingContext2D, frame: PictureFrame, palette: Palette): void {
  context.setLineDash([]);
  context.lineWidth = 1;
  for (const heightM of heightMarks(frame)) {
    const y = Math.round(frame.originY - heightM * frame.pxPerM) + 0.5;
    context.strokeStyle = heightM === 0 ? palette.rule : palette.hairline;
    context.beginPath();
    context.moveTo(30, y);
    context.lineTo(frame.widthPx, y);
    context.stroke();
  }
}

/** Over everything, so that a picked fitting is found where it is hidden too: edged in ink, its own colour within. */
function drawEdges(
  context: CanvasRenderingContext2D,
  picture: CanvasPicture,
  fittingId: string | null,
  palette: Palette,
  edgePx: number,
): void {
  if (fittingId === null) return;
  const own = picture.items.filter((item) => item.fittingId === fittingId);
  context.setLineDash([]);
  context.strokeStyle = palette.ink;
  for (const item of own) {
    trace(context, item);
    context.lineWidth = item.strokePx + edgePx;
    context.stroke();
  }
  for (const item of own) {
    const paint = paintOf(item, picture.meaning, palette);
    trace(context, item);
    if (item.strokePx > 1) fillAndStroke(context, { ...paint, casing: null });
  }
}
