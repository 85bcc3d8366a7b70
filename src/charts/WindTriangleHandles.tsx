import { useRef, type KeyboardEvent, type PointerEvent } from 'react';
import { keyStep, type KeyStep } from './windTriangleDrag';
import type { Point, WindTriangleGeometry } from './windTriangleGeometry';

/** What one end of the triangle says and where it stands. */
export interface Handle {
  readonly label: string;
  readonly at: Point;
  readonly value: number;
  readonly most: number;
  /** The value with its unit, and for the wind its angle. */
  readonly valueText: string;
}

/** What hands and keys do to an end of the triangle. */
export interface HandleMoves {
  /** A hand has taken hold. */
  readonly onHold: () => void;
  /** @param to where the hand is, in the drawing's pixels. */
  readonly onDrag: (to: Point) => void;
  readonly onStep: (step: KeyStep) => void;
  /** The hand has let go. */
  readonly onLetGo: () => void;
}

interface WindTriangleHandleProps {
  readonly triangle: WindTriangleGeometry;
  readonly handle: Handle;
  readonly moves: HandleMoves;
}

const ringPx = 3.5;
const reachPx = 13;

/** An end of the triangle that is dragged, or moved with the arrow keys. */
export function WindTriangleHandle({ triangle, handle, moves }: WindTriangleHandleProps) {
  /** Where the hand took hold, off the end's middle: the end must not jump to the hand. */
  const grip = useRef<Point | null>(null);
  const { at } = handle;

  const letGo = (): void => {
    if (grip.current === null) return;
    grip.current = null;
    moves.onLetGo();
  };
  return (
    <g
      className="wind-triangle-handle"
      role="slider"
      tabIndex={0}
      aria-label={handle.label}
      aria-valuemin={0}
      aria-valuemax={handle.most}
      aria-valuenow={handle.value}
      aria-valuetext={handle.valueText}
      onPointerDown={(event) => {
        if (event.button !== 0) return;
        event.currentTarget.setPointerCapture(event.pointerId);
        const hand = handOf(event, triangle);
        grip.current = { x: hand.x - at.x, y: hand.y - at.y };
        moves.onHold();
      }}
      onPointerMove={(event) => {
        if (grip.current === null) return;
        const hand = handOf(event, triangle);
        moves.onDrag({ x: hand.x - grip.current.x, y: hand.y - grip.current.y });
      }}
      onPointerUp={letGo}
      onPointerCancel={letGo}
      onLostPointerCapture={letGo}
      onKeyDown={(event) => {
        step(event, moves);
      }}
    >
      <circle className="wind-triangle-reach" cx={at.x} cy={at.y} r={reachPx} />
      <circle className="wind-triangle-ring" cx={at.x} cy={at.y} r={ringPx} />
    </g>
  );
}

function step(event: KeyboardEvent, moves: HandleMoves): void {
  if (event.altKey || event.ctrlKey || event.metaKey) return;
  const keyed = keyStep(event.key, event.shiftKey);
  if (keyed === null) return;
  event.preventDefault();
  moves.onStep(keyed);
}

/** Where the hand is in the drawing's pixels, however large the page draws it. */
function handOf(event: PointerEvent<SVGGElement>, { widthPx, heightPx }: WindTriangleGeometry): Point {
  const box = event.currentTarget.ownerSVGElement?.getBoundingClientRect();
  if (box === undefined || box.width === 0 || box.height === 0) return { x: event.clientX, y: event.clientY };
  return {
    x: ((event.clientX - box.left) * widthPx) / box.width,
    y: ((event.clientY - box.top) * heightPx) / box.height,
  };
}
