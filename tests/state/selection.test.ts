import { beforeEach, describe, expect, it } from 'vitest';
import { saveProject } from '../../src/project/file/saveProject';
import { useAppStore } from '../../src/state/appStore';
import { actedOnIds } from '../../src/state/selection';
import { boat } from '../project/edit/support';

const app = useAppStore.getState;
const shownIds = ['box', 'pole', 'thin', 'stanchion', 'hidden'];

beforeEach(() => {
  const saved = saveProject(boat());
  if (!saved.ok) throw new Error('does not save');
  app().openText('test.json', saved.text);
  app().select('pole');
});

describe('picking out rows', () => {
  it('acts on the focus row while none are picked out', () => {
    expect(actedOnIds(app())).toEqual(['pole']);
    app().select(null);
    expect(actedOnIds(app())).toEqual([]);
  });

  it('takes the focus row along with the first pick, and lets go by a second click', () => {
    app().toggleSelected('thin');
    expect(app().selectedIds).toEqual(['pole', 'thin']);
    expect(app().selectedFittingId).toBe('thin');
    app().toggleSelected('pole');
    expect(app().selectedIds).toEqual(['thin']);
  });

  it('takes a range either way in the order on the page, from where it began', () => {
    app().selectRange('stanchion', shownIds);
    expect(app().selectedIds).toEqual(['pole', 'thin', 'stanchion']);
    app().selectRange('box', shownIds);
    expect(app().selectedIds).toEqual(['box', 'pole']);
    expect(app().selectedFittingId).toBe('box');
  });

  it('takes the row alone when the range began at one that is not shown', () => {
    app().selectRange('thin', ['box', 'thin']);
    expect(app().selectedIds).toEqual(['thin']);
  });

  it('lets go when one row is selected, another project opens, or somebody says so', () => {
    app().selectRange('thin', shownIds);
    app().select('box');
    expect(app().selectedIds).toEqual([]);
    app().toggleSelected('thin');
    app().clearSelected();
    expect(app().selectedIds).toEqual([]);
    expect(app().selectedFittingId).toBe('thin');
  });
});
