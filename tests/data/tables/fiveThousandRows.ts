/** A survey of 5000 rows with semicolons and decimal commas; every fiftieth has a diameter that is no number. */
export function fiveThousandRows(): string {
  const head = 'Item;Zone;Shape;Diameter (mm);Length (m);Above deck (m);Aft of stem (m);Side;Count;Photo;Note';
  const rows = Array.from({ length: 5000 }, (_, i) => {
    const diameter = i % 50 === 49 ? 'thick' : `${4 + (i % 30)},5`;
    const side = ['port', 'stbd', 'both'][i % 3] ?? '';
    const shape = i % 3 === 0 ? 'rope' : 'tube';
    const place = `${1 + (i % 4)},25;0,${i % 9};${i % 11},5`;
    return `Line ${i + 1};Side decks;${shape};${diameter};${place};${side};1;IMG ${i};`;
  });
  return [head, ...rows, ''].join('\r\n');
}
