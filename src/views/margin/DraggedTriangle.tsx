import { useRef, useState } from 'react';
import { WindTriangle } from '../../charts/WindTriangle';
import { WindTriangleHandle, type HandleMoves } from '../../charts/WindTriangleHandles';
import {
  boatSpeedFromPointer,
  mostBoatSpeedMs,
  mostWindMs,
  snappedAngleRad,
  snappedSpeedMs,
  steppedBoatSpeedMs,
  steppedWind,
  windFromPointer,
  type DrawnWind,
} from '../../charts/windTriangleDrag';
import { windTriangleGeometry, type TriangleFrame } from '../../charts/windTriangleGeometry';
import { setTriangle, type TriangleSides } from '../../project/edit/setTriangle';
import type { ConditionSummary } from '../../project/ledger/conditionSummary';
import { useAppStore } from '../../state/appStore';
import { sliderSpeed, triangleTexts } from './triangleTexts';

const triangleSize = { widthPx: 164, heightPx: 156 };

/** The condition's wind triangle. Its ends are dragged, or moved with the arrow keys; a drag is one step to undo. */
export function DraggedTriangle({ summary }: { readonly summary: ConditionSummary }) {
  /** Held while a hand drags: a drawing that fitted itself anew would move under the hand. */
  const [frame, setFrame] = useState<TriangleFrame | null>(null);
  const isHeld = useRef(false);
  const { condition, trueWindAt10Ms, trueWindAngleRad } = summary;
  const { tack, boatSpeedMs } = condition;
  const triangle = windTriangleGeometry(summary, triangleSize, frame);
  const texts = triangleTexts(summary);

  const set = (words: string, sides: Partial<TriangleSides>): void => {
    const all = { trueWindAt10Ms, trueWindAngleRad, boatSpeedMs, ...sides };
    useAppStore
      .getState()
      .edit(
        `Change the ${words} of ${condition.name}`,
        (project) => setTriangle(project, condition.id, all),
        { group: `${condition.id}.triangle.${words}`, isHeld: isHeld.current },
      );
  };
  const setWind = ({ speedMs, angleRad }: DrawnWind): void => {
    set('true wind', {
      trueWindAt10Ms: snappedSpeedMs(speedMs, mostWindMs),
      trueWindAngleRad: snappedAngleRad(angleRad),
    });
  };
  const setBoatSpeed = (nextMs: number): void => {
    set('boat speed', { boatSpeedMs: snappedSpeedMs(nextMs, mostBoatSpeedMs) });
  };
  const holding: Pick<HandleMoves, 'onHold' | 'onLetGo'> = {
    onHold: () => {
      useAppStore.getState().endGroup();
      isHeld.current = true;
      setFrame({ boat: triangle.boat, pxPerMs: triangle.pxPerMs });
    },
    onLetGo: () => {
      useAppStore.getState().endGroup();
      isHeld.current = false;
      setFrame(null);
    },
  };
  return (
    <WindTriangle triangle={triangle}>
      <WindTriangleHandle
        triangle={triangle}
        handle={{
          label: 'True wind',
          at: triangle.trueFrom,
          value: sliderSpeed(trueWindAt10Ms),
          most: sliderSpeed(mostWindMs),
          valueText: texts.wind,
        }}
        moves={{
          ...holding,
          onDrag: (to) => {
            setWind(windFromPointer(to, triangle, tack));
          },
          onStep: (step) => {
            setWind(steppedWind({ speedMs: trueWindAt10Ms, angleRad: trueWindAngleRad }, step));
          },
        }}
      />
      <WindTriangleHandle
        triangle={triangle}
        handle={{
          label: 'Boat speed',
          at: triangle.apparentFrom,
          value: sliderSpeed(boatSpeedMs),
          most: sliderSpeed(mostBoatSpeedMs),
          valueText: texts.boat,
        }}
        moves={{
          ...holding,
          onDrag: (to) => {
            setBoatSpeed(boatSpeedFromPointer(to, triangle));
          },
          onStep: (step) => {
            setBoatSpeed(steppedBoatSpeedMs(boatSpeedMs, step));
          },
        }}
      />
    </WindTriangle>
  );
}
