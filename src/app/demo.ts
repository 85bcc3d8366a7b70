/** The finished example that the page opens on. */
export const demoFileName = 'demo.windtoll.json';

/** The demo's files as text, each loaded when it is asked for. */
const files = import.meta.glob<string>('../../demo-data/*.windtoll.json', {
  query: '?raw',
  import: 'default',
});

/** The demo project's text. */
export async function loadDemo(): Promise<string> {
  const [load] = Object.values(files);
  if (load === undefined) throw new Error('The page was built without its demo.');
  return load();
}
