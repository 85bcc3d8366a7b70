import { Dialog } from './Dialog';
import { keyTable } from './keyTable';
import { closeDialog } from './shell';

/** The sheet of keys. */
export function KeysDialog() {
  return (
    <Dialog title="Keys" onClose={closeDialog}>
      {keyTable.map(({ where, lines }) => (
        <section key={where} aria-label={where}>
          <h3>{where}</h3>
          <table className="keys-table">
            <tbody>
              {lines.map(([keys, does]) => (
                <tr key={keys}>
                  <th scope="row">
                    <kbd>{keys}</kbd>
                  </th>
                  <td>{does}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      ))}
      <p className="fine">On a Mac the Command key does what Ctrl does here.</p>
    </Dialog>
  );
}
