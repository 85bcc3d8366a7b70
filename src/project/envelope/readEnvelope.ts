import type { Unit } from '../../units/unitTable';
import type {
  AreaOfId,
  EndsId,
  EnvelopeFieldId,
  EnvelopeShapeId,
  PowerKindId,
  WindKindId,
} from './envelopeTexts';

/** A number as written: its value, and how far its last written digit leaves it open. */
export interface WrittenNumber {
  readonly valueSi: number;
  /** Half a unit of the last written digit to each side. */
  readonly lowSi: number;
  readonly highSi: number;
  readonly unit: Unit;
  /** False when a bare number was read in the field's own unit, which the check then lists. */
  readonly isUnitTyped: boolean;
}

/** An estimate's numbers; null where nothing, or nothing that could be read, stands. */
export interface EnvelopeNumbers {
  readonly speed: WrittenNumber | null;
  readonly windKind: WindKindId | null;
  readonly density: WrittenNumber | null;
  readonly temperature: WrittenNumber | null;
  readonly shape: EnvelopeShapeId | null;
  readonly count: WrittenNumber | null;
  readonly width: WrittenNumber | null;
  readonly length: WrittenNumber | null;
  readonly depth: WrittenNumber | null;
  readonly ends: EndsId | null;
  readonly area: WrittenNumber | null;
  readonly areaOf: AreaOfId | null;
  readonly coefficient: WrittenNumber | null;
  readonly dragArea: WrittenNumber | null;
  readonly force: WrittenNumber | null;
  readonly power: WrittenNumber | null;
  readonly powerKind: PowerKindId | null;
  readonly horsepower: WrittenNumber | null;
  readonly windAngle: WrittenNumber | null;
  readonly windAngleKind: WindKindId | null;
  readonly boatSpeed: WrittenNumber | null;
}

export interface EnvelopeReading {
  readonly numbers: EnvelopeNumbers;
  readonly problems: Readonly<Partial<Record<EnvelopeFieldId, string>>>;
}

// readEnvelope(texts: EnvelopeTexts): EnvelopeReading follows here.
