import { memo, useMemo, useRef, useState, type KeyboardEvent, type PointerEvent } from 'react';
import { calloutsOf, type Callout } from '../../charts/windsEye/callouts';
import type { PlanePoint } from '../../charts/windsEye/convexHull';
import { heightMarks } from '../../charts/windsEye/frameOf';
import type { PictureMeaning } from '../../charts/windsEye/paints';
import { itemAt, type PictureFrame, type SceneItem } from '../../charts/windsEye/scene';
import type { PictureView } from '../../charts/windsEye/viewOf';
import type { Solid } from '../../project/picture/solids';
import { wishesOf, type PictureRow } from './pictureModel';
import { usePainted } from './usePainted';

interface PictureStageProps {
  readonly rows: readonly PictureRow[];
  readonly solids: readonly Solid[];
  readonly items: readonly SceneItem[];
  readonly view: PictureView;
  /** Where this changes, the boat moves there. */
  readonly place: string;
  readonly frame: PictureFrame;
  readonly meaning: PictureMeaning;
  readonly selectedId: string | null;
  readonly words: string;
  readonly onPick: (fittingId: string) => void;
  /** The hand turned her by so much, rad. */
  readonly onTurn: (byRad: number) => void;
}

/** Within so many px of a fitting, the pointer is on it: thin things are hard to hit. */
const reachPx = 6;
/** A press that moves less than this picks. */
const dragFromPx = 4;
const radPerPx = Math.PI / 360;

/** The picture: pointed at, picked from, turned by the hand, walked by the keys. */
export function PictureStage(props: PictureStageProps) {
  const { rows, items, frame, meaning, selectedId, view, words, onPick } = props;
  const [hoveredId, setHoveredId] = useState<string | null>(null);
  const [isTurning, setIsTurning] = useState(false);
  const hasHeights = view.kind !== 'above';
  const { ref, isMoving } = usePainted({ ...props, hasHeights, hoveredId });
  const isCalm = !isMoving && !isTurning;
  const callouts = useMemo(
    () => (isCalm ? calloutsOf(wishesOf(rows), items, frame) : []),
    [isCalm, rows, items, frame],
  );
  const hand = useHand({ ...props, onHover: setHoveredId, onTurning: setIsTurning });
  const said = rows.find(({ row }) => row.fittingId === (hoveredId ?? selectedId));
  return (
    <div className="picture-stage">
      <div
        className={isTurning ? 'picture-plane picture-turning' : 'picture-plane'}
        style={{ height: frame.heightPx }}
        {...hand}
      >
        <canvas ref={ref} className="picture-canvas" style={{ width: frame.widthPx, height: frame.heightPx }}>
          {words}
        </canvas>
        <Overlay frame={frame} hasHeights={hasHeights} callouts={callouts} selectedId={selectedId} />
      </div>
      <FittingList rows={rows} selectedId={selectedId} onPick={onPick} />
      <p className="picture-said" role="status" aria-label="In the picture">
        {said === undefined ? 'Nothing picked.' : saidOf(said, meaning)}
      </p>
    </div>
  );
}

function saidOf({ row, valueText, isGhost, isChanged }: PictureRow, { hue }: PictureMeaning): string {
  const state = isGhost ? ', not in the wind here' : isChanged ? ', changed by the plan' : '';
  return `${row.number} ${row.fitting.name}: ${valueText}${hue === 'saving' ? ' saved' : ''}${state}.`;
}

interface HandOptions extends Pick<PictureStageProps, 'items' | 'onPick' | 'onTurn'> {
  readonly onHover: (fittingId: string | null) => void;
  readonly onTurning: (isTurning: boolean) => void;
}

/** The pointer over the picture: it names what it is on, a press picks, a pull to the side turns her. */
function useHand({ items, onPick, onTurn, onHover, onTurning }: HandOptions) {
  const press = useRef<{ readonly startX: number; lastX: number; isDrag: boolean } | null>(null);
  const hitAt = (event: PointerEvent<HTMLElement>): string | null => {
    const box = event.currentTarget.getBoundingClientRect();
    const at: PlanePoint = [event.clientX - box.left, event.clientY - box.top];
    return itemAt(items, at, reachPx)?.fittingId ?? null;
  };
  return {
    onPointerDown: (event: PointerEvent<HTMLElement>) => {
      if (event.button !== 0) return;
      event.currentTarget.setPointerCapture(event.pointerId);
      press.current = { startX: event.clientX, lastX: event.clientX, isDrag: false };
    },
    onPointerMove: (event: PointerEvent<HTMLElement>) => {
      const held = press.current;
      if (held === null) {
        onHover(hitAt(event));
        return;
      }
      if (!held.isDrag && Math.abs(event.clientX - held.startX) >= dragFromPx) {
        held.isDrag = true;
        onTurning(true);
        onHover(null);
      }
      if (held.isDrag) onTurn((event.clientX - held.lastX) * radPerPx);
      held.lastX = event.clientX;
    },
    onPointerUp: (event: PointerEvent<HTMLElement>) => {
      const held = press.current;
      press.current = null;
      onTurning(false);
      if (held === null || held.isDrag) return;
      const hit = hitAt(event);
      if (hit !== null) onPick(hit);
    },
    onPointerCancel: () => {
      press.current = null;
      onTurning(false);
    },
    onPointerLeave: () => {
      onHover(null);
    },
  };
}

interface OverlayProps {
  readonly frame: PictureFrame;
  readonly hasHeights: boolean;
  readonly callouts: readonly Callout[];
  readonly selectedId: string | null;
}

/** Texts and their lines: sharp on every screen, and not in the way of the pointer. */
function Overlay({ frame, hasHeights, callouts, selectedId }: OverlayProps) {
  const { widthPx, heightPx } = frame;
  return (
    <svg
      className="picture-overlay"
      width={widthPx}
      height={heightPx}
      viewBox={`0 0 ${widthPx} ${heightPx}`}
      aria-hidden="true"
    >
      {hasHeights &&
        heightMarks(frame).map((heightM) => (
          <text
            key={heightM}
            className="chart-tick"
            x={26}
            y={frame.originY - heightM * frame.pxPerM + 4}
            textAnchor="end"
          >
            {heightM === 0 ? '0 m' : heightM}
          </text>
        ))}
      {callouts.map((callout) => (
        <CalloutMark
          key={callout.fittingId}
          callout={callout}
          isSelected={callout.fittingId === selectedId}
        />
      ))}
    </svg>
  );
}

function CalloutMark({ callout, isSelected }: { readonly callout: Callout; readonly isSelected: boolean }) {
  const { shownName, value, x, y, anchor, line } = callout;
  const [[x1, y1], [x2, y2]] = line;
  return (
    <g className={isSelected ? 'picture-callout picture-callout-selected' : 'picture-callout'}>
      <line x1={x1} y1={y1} x2={x2} y2={y2} />
      <circle cx={x2} cy={y2} r={1.8} />
      <text className="chart-label" x={x} y={y} textAnchor={anchor}>
        {shownName}
        <tspan className="chart-label-strong" x={x} dy={14}>
          {value}
        </tspan>
      </text>
    </g>
  );
}

interface FittingListProps {
  readonly rows: readonly PictureRow[];
  readonly selectedId: string | null;
  readonly onPick: (fittingId: string) => void;
}

/** The shapes for the keys and for those who listen, in the order of the ledger. */
const FittingList = memo(function FittingList({ rows, selectedId, onPick }: FittingListProps) {
  const index = rows.findIndex(({ row }) => row.fittingId === selectedId);
  const onKeyDown = (event: KeyboardEvent): void => {
    const to = {
      ArrowDown: index + 1,
      ArrowRight: index + 1,
      ArrowUp: Math.max(index - 1, 0),
      ArrowLeft: Math.max(index - 1, 0),
      Home: 0,
      End: rows.length - 1,
    }[event.key];
    if (to === undefined || event.altKey || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    const next = rows[Math.min(to, rows.length - 1)];
    if (next !== undefined) onPick(next.row.fittingId);
  };
  return (
    <ul
      className="picture-list"
      role="listbox"
      aria-label="Fittings in the picture"
      tabIndex={0}
      aria-activedescendant={index === -1 ? undefined : `picture-${rows[index]?.row.fittingId ?? ''}`}
      onKeyDown={onKeyDown}
    >
      {rows.map(({ row, valueText, isGhost }) => (
        <li
          key={row.fittingId}
          id={`picture-${row.fittingId}`}
          role="option"
          aria-selected={row.fittingId === selectedId}
        >
          {row.number} {row.fitting.name}, {isGhost ? 'not in the wind' : valueText}
        </li>
      ))}
    </ul>
  );
});
