/** One line of the help sheet: keys, and what they do. */
export type KeyLine = readonly [keys: string, does: string];

interface KeyGroup {
  readonly where: string;
  readonly lines: readonly KeyLine[];
}

/** Every key of the page. On a Mac the Command key does what Ctrl does here. */
export const keyTable: readonly KeyGroup[] = [
  {
    where: 'Everywhere',
    lines: [
      ['Ctrl Z', 'Undo'],
      ['Ctrl Shift Z, Ctrl Y', 'Redo'],
      ['Ctrl S', 'Save to a file'],
      ['Ctrl O', 'Open a file'],
      ['F6', 'From the ledger to the pane beside it, and back'],
    ],
  },
  {
    where: 'Where no field has the focus',
    lines: [
      ['1 to 6', 'The panes beside the ledger, in the order of their words'],
      ['[ and ]', 'Condition before, condition after'],
      ['p', 'Next plan; after the last, as sailed'],
      ['v', 'From the working to the picture, and back'],
      ['l', 'To the rows of the ledger'],
      ['b', 'To the pane beside the ledger'],
      ['?', 'This sheet'],
    ],
  },
  {
    where: 'In the ledger',
    lines: [
      ['Arrow up, arrow down', 'Row before, row after'],
      ['Home, End', 'First row, last row'],
      ['Enter', 'Edit the row beside the ledger'],
      ['F2', 'Edit it in place'],
      ['n, Insert', 'Add a fitting'],
      ['d', 'Duplicate'],
      ['Alt with arrow up or down', 'Move the row'],
      ['x', 'Leave out of the sum, or take back in'],
      ['Delete', 'Delete'],
      ['Space', 'Pick out together with others'],
      ['Shift with an arrow', 'Pick out from row to row'],
      ['Escape', 'Let go of what is picked out'],
    ],
  },
  {
    where: 'In a list of conditions, zones or refit items',
    lines: [['Alt with arrow up or down', 'Move the entry that has the focus']],
  },
  {
    where: 'In a field',
    lines: [
      ['Arrow up, arrow down', 'One step more or less; with Shift ten'],
      ['Enter', 'Done'],
      ['Escape', 'Back to the value from before'],
    ],
  },
];
