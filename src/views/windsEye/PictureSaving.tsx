import { calloutsOf } from '../../charts/windsEye/callouts';
import type { PictureMeaning } from '../../charts/windsEye/paints';
import { pictureSvg } from '../../charts/windsEye/pictureSvg';
import type { PictureFrame, SceneItem } from '../../charts/windsEye/scene';
import { SaveChart } from '../../ui/SaveChart';
import { wishesOf, type MeasureId, type PictureRow } from './pictureModel';
import { lineWords, tintWords } from './PictureLegend';

interface PictureSavingProps {
  readonly items: readonly SceneItem[];
  readonly rows: readonly PictureRow[];
  readonly meaning: PictureMeaning;
  readonly measure: MeasureId;
  readonly frame: PictureFrame;
  readonly hasHeights: boolean;
  readonly titles: readonly string[];
}

/** The picture as a file, as it stands, with its title and the day. */
export function PictureSaving({
  items,
  rows,
  meaning,
  measure,
  frame,
  hasHeights,
  titles,
}: PictureSavingProps) {
  return (
    <SaveChart
      name={titles.join(' ')}
      svg={(day) =>
        pictureSvg({
          items,
          callouts: calloutsOf(wishesOf(rows), items, frame),
          meaning,
          frame,
          hasHeights,
          titleLines: [...titles, day],
          legendLines: [
            tintWords(meaning, measure),
            lineWords('after', meaning.changedIds.size > 0).join('; '),
          ],
        })
      }
    />
  );
}
