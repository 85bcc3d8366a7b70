import { useDeferredValue, useMemo, useState } from 'react';
import { useWidth } from '../../charts/useWidth';
import { frameOf } from '../../charts/windsEye/frameOf';
import { sceneOf } from '../../charts/windsEye/scene';
import { viewOf, type ViewKind } from '../../charts/windsEye/viewOf';
import { deckLineOf } from '../../project/core/fittingToPhysics';
import type { Project } from '../../project/file/schema';
import { solveProjectCondition } from '../../project/ledger/conditionSummary';
import { heaviestPart } from '../../project/ledger/heaviestPart';
import type { BasisPart, ProjectLedger } from '../../project/ledger/ledgerTypes';
import { rigOutlines } from '../../project/picture/hull';
import { useAppStore, useLedger } from '../../state/appStore';
import { unitsInOneWord, usePreferences } from '../../state/preferences';
import { useMediaQuery } from '../../ui/useMediaQuery';
import { LookChoices, LookSliders } from './LookChoices';
import { meaningOf, pictureRows, solidsOfRows, type MeasureId } from './pictureModel';
import { PictureLegend } from './PictureLegend';
import { PictureSaving } from './PictureSaving';
import { PictureStage } from './PictureStage';
import { pictureWords, titleLines } from './pictureWords';
import { SweepPart } from './SweepPart';
import './windsEye.css';

/** The boat as the apparent wind sees her, beside the ledger. */
export function WindsEyePane() {
  const project = useAppStore((state) => state.project);
  const ledger = useLedger();
  const part = heaviestPart(ledger?.parts ?? []);
  const look = useLook();
  const readersUnits = usePreferences(unitsInOneWord);
  if (project === null || ledger === null || part === undefined)
    return <p className="muted">Without a sailing condition there is no wind to look along.</p>;
  // The picture remembers its texts; how it is looked at outlasts a change of units.
  return <Picture key={readersUnits} project={project} ledger={ledger} part={part} look={look} />;
}

/** From where she is looked at, and what colours her. */
function useLook() {
  const [kind, setKind] = useState<ViewKind>('wind');
  const [wantedMeasure, setMeasure] = useState<MeasureId>('trackPower');
  const [wantedHeightM, setHeightM] = useState<number | null>(null);
  const [turnRad, setTurnRad] = useState(0);
  return { kind, setKind, wantedMeasure, setMeasure, wantedHeightM, setHeightM, turnRad, setTurnRad };
}

interface PictureProps {
  readonly project: Project;
  readonly ledger: ProjectLedger;
  readonly part: BasisPart;
  readonly look: ReturnType<typeof useLook>;
}

const firstWidthPx = 352;
/** Tall enough for a mast, short enough that the words below it are seen. */
const tallestPx = { usual: 560, smallScreen: 330 } as const;

/** Half of what the boom is let out: for orientation only. */
function sheetedRad(angleFromBowRad: number): number {
  return Math.min(Math.max(Math.abs(angleFromBowRad) / 2 - Math.PI / 18, Math.PI / 45), (80 * Math.PI) / 180);
}

function Picture({ project, ledger, part, look }: PictureProps) {
  const { kind, setKind, wantedMeasure, setMeasure, wantedHeightM, setHeightM, turnRad, setTurnRad } = look;
  const [ref, widthPx] = useWidth<HTMLDivElement>(firstWidthPx);
  const shown = useAppStore((state) => state.shown);
  const selectedId = useAppStore((state) => state.selectedFittingId);
  const { condition, deck, masthead } = part.summary;
  const state = useMemo(() => solveProjectCondition(project, condition).states.best, [project, condition]);
  const isSmall = useMediaQuery('(max-height: 799px) and (min-width: 1000px)');
  const mostPx = isSmall ? tallestPx.smallScreen : tallestPx.usual;
  const line = useMemo(() => deckLineOf(project.boat), [project.boat]);
  const side = shown === 'before' || ledger.plan === null ? 'before' : 'after';
  const measure = wantedMeasure === 'saving' && ledger.plan === null ? 'trackPower' : wantedMeasure;
  const rows = useMemo(
    () => pictureRows(ledger, condition.id, side, measure),
    [ledger, condition.id, side, measure],
  );
  const meaning = useMemo(() => meaningOf(rows, measure), [rows, measure]);
  const solids = useMemo(
    () => [
      ...rigOutlines(project.boat, state.tackSign, sheetedRad(deck.angleFromBowRad)),
      ...solidsOfRows(project.boat, rows, line, state),
    ],
    [project.boat, rows, line, state, deck.angleFromBowRad],
  );
  const heightM = wantedHeightM ?? deck.heightM;
  const view = useMemo(() => viewOf(kind, state, heightM, turnRad), [kind, state, heightM, turnRad]);
  const frame = useMemo(
    () => frameOf(solids, kind, state, widthPx, mostPx),
    [solids, kind, state, widthPx, mostPx],
  );
  const items = useMemo(() => sceneOf(solids, view, frame), [solids, view, frame]);
  const looking = { kind, heightM, turnRad, state };
  const words = pictureWords(rows, looking, part, measure);
  const sweptLedger = useDeferredValue(ledger);
  return (
    <article className="picture" aria-label="The boat as the apparent wind sees her">
      <LookChoices
        kind={kind}
        onKind={(next) => {
          setKind(next);
          setTurnRad(0);
        }}
        measure={measure}
        onMeasure={setMeasure}
        hasFullPrice={ledger.hasFullPrice}
        hasPlan={ledger.plan !== null}
      />
      <figure ref={ref} aria-label={words.title}>
        <PictureStage
          rows={rows}
          solids={solids}
          items={items}
          view={view}
          place={`${kind} ${condition.id}`}
          frame={frame}
          meaning={meaning}
          selectedId={selectedId}
          words={words.all}
          onPick={pick}
          onTurn={(byRad) => {
            setTurnRad((before) => wrapped(before + byRad));
          }}
        />
        <LookSliders
          kind={kind}
          heightM={heightM}
          deckM={deck.heightM}
          mastheadM={masthead.heightM}
          onHeight={setHeightM}
          turnRad={turnRad}
          onTurn={setTurnRad}
          state={state}
        />
        <figcaption>
          <PictureLegend meaning={meaning} measure={measure} side={side} hasPlan={ledger.plan !== null} />
        </figcaption>
      </figure>
      <details className="picture-words">
        <summary>The picture in words</summary>
        <p>{words.all}</p>
      </details>
      <PictureSaving
        items={items}
        rows={rows}
        meaning={meaning}
        measure={measure}
        frame={frame}
        hasHeights={kind !== 'above'}
        titles={titleLines(project, ledger, words.title, side)}
      />
      <SweepPart project={project} ledger={sweptLedger} part={part} state={state} line={line} />
    </article>
  );
}

function pick(fittingId: string): void {
  useAppStore.getState().select(fittingId);
}

function wrapped(angleRad: number): number {
  return Math.atan2(Math.sin(angleRad), Math.cos(angleRad));
}
