import type { Unit } from '../../units/unitTable';

/** The columns of a survey table, in their order. */
export const surveyKeys = [
  'item',
  'zone',
  'shape',
  'width',
  'length',
  'thickness',
  'dragArea',
  'aboveDeck',
  'aftOfStem',
  'lastAftOfStem',
  'side',
  'lies',
  'count',
  'photo',
  'basis',
  'note',
] as const;

export type SurveyKey = (typeof surveyKeys)[number];

interface SurveyColumn {
  /** Without its unit. */
  readonly label: string;
  /** In which our own files write it; null for words and counts. */
  readonly unit: Unit | null;
  /** Other heads that people write over it: whole words, plain small letters. */
  readonly aliases: readonly string[];
}

/** What each column is called, here and elsewhere (common practice, no source). */
export const surveyColumns: Readonly<Record<SurveyKey, SurveyColumn>> = {
  item: {
    label: 'Item',
    unit: null,
    aliases: ['fitting', 'name', 'item name', 'what', 'description', 'object', 'part'],
  },
  zone: { label: 'Zone', unit: null, aliases: ['location', 'region', 'where', 'part of the boat'] },
  shape: {
    label: 'Shape',
    unit: null,
    aliases: ['type', 'kind', 'form', 'section', 'cross section'],
  },
  width: {
    label: 'Width or diameter',
    unit: 'mm',
    aliases: ['diameter', 'dia', 'diam', 'ø', 'od', 'width', 'chord', 'breadth', 'd', 'w'],
  },
  length: { label: 'Length', unit: 'm', aliases: ['long', 'len', 'l', 'span'] },
  thickness: { label: 'Thickness', unit: 'mm', aliases: ['thick', 'thk', 't'] },
  dragArea: { label: 'Drag area', unit: 'm2', aliases: ['cda', 'area', 'cd a'] },
  aboveDeck: {
    label: 'Height above deck',
    unit: 'm',
    aliases: ['above deck', 'height', 'height over deck', 'h', 'z'],
  },
  aftOfStem: {
    label: 'Aft of stem',
    unit: 'm',
    aliases: ['from stem', 'distance aft of stem', 'from bow', 'distance from bow', 'aft', 'station', 'x'],
  },
  lastAftOfStem: {
    label: 'Last one aft of stem',
    unit: 'm',
    aliases: ['last aft of stem', 'last aft', 'last one', 'last station'],
  },
  side: { label: 'Side', unit: null, aliases: ['port or starboard', 'port starboard', 'p s'] },
  lies: { label: 'Lies', unit: null, aliases: ['direction', 'orientation', 'runs', 'stands'] },
  count: {
    label: 'Count',
    unit: null,
    aliases: ['qty', 'quantity', 'number of', 'how many', 'pcs', 'pieces', 'amount', 'n'],
  },
  photo: {
    label: 'Photo',
    unit: null,
    aliases: ['photo number', 'photo no', 'photos', 'picture', 'picture number', 'image', 'img'],
  },
  basis: {
    label: 'Measured or estimated',
    unit: null,
    aliases: ['measured', 'estimated', 'basis', 'measured estimated', 'm e', 'how known'],
  },
  note: { label: 'Note', unit: null, aliases: ['notes', 'remark', 'remarks', 'comment', 'comments'] },
};

/** The head of a column in our own files: "Length (m)". */
export function surveyHead(key: SurveyKey): string {
  const { label, unit } = surveyColumns[key];
  return unit === null ? label : `${label} (${unit})`;
}

/** Texts of the cells of a row, '' where nothing stands. */
export type SurveyTexts = Readonly<Record<SurveyKey, string>>;

export const noTexts = Object.fromEntries(surveyKeys.map((key) => [key, ''])) as SurveyTexts;
