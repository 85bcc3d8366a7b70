import { useLayoutEffect, useRef, useState, type RefObject } from 'react';
import { betweenViews } from '../../charts/windsEye/betweenViews';
import { sceneOf, type SceneItem } from '../../charts/windsEye/scene';
import type { PictureView } from '../../charts/windsEye/viewOf';
import type { Solid } from '../../project/picture/solids';
import { useMediaQuery } from '../../ui/useMediaQuery';
import { paintCanvas, paletteOf, type CanvasPicture } from './paintCanvas';

const movingMs = 200;

interface PaintedOptions extends CanvasPicture {
  readonly solids: readonly Solid[];
  readonly view: PictureView;
  /** Where this changes, the boat turns and heels to her new place; else she follows the hand at once. */
  readonly place: string;
}

/** Keeps a canvas painted; answers with it, and with whether she is still on her way. */
export function usePainted({
  solids,
  view,
  place,
  items,
  meaning,
  frame,
  hasHeights,
  selectedId,
  hoveredId,
}: PaintedOptions): {
  readonly ref: RefObject<HTMLCanvasElement | null>;
  readonly isMoving: boolean;
} {
  const ref = useRef<HTMLCanvasElement>(null);
  const last = useRef<{ readonly view: PictureView; readonly place: string } | null>(null);
  const [isMoving, setIsMoving] = useState(false);
  const isStill = useMediaQuery('(prefers-reduced-motion: reduce)');
  const isDark = useMediaQuery('(prefers-color-scheme: dark)');

  useLayoutEffect(() => {
    const canvas = ref.current;
    if (canvas === null) return;
    const palette = paletteOf(canvas, isDark);
    const paint = (shown: readonly SceneItem[]): void => {
      paintCanvas(canvas, { items: shown, meaning, frame, hasHeights, selectedId, hoveredId }, palette);
    };
    const from = last.current;
    last.current = { view, place };
    if (from === null || from.place === place || isStill) {
      paint(items);
      return;
    }
    setIsMoving(true);
    let request = 0;
    let startMs: number | null = null;
    const step = (nowMs: number): void => {
      startMs ??= nowMs;
      const share = Math.min((nowMs - startMs) / movingMs, 1);
      paint(share < 1 ? sceneOf(solids, betweenViews(from.view, view, share), frame) : items);
      if (share < 1) request = window.requestAnimationFrame(step);
      else setIsMoving(false);
    };
    request = window.requestAnimationFrame(step);
    return () => {
      window.cancelAnimationFrame(request);
      setIsMoving(false);
    };
  }, [solids, view, place, items, meaning, frame, hasHeights, selectedId, hoveredId, isStill, isDark]);
  return { ref, isMoving };
}
