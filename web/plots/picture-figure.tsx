import type { Picture } from '@clampwright/core/plot';
import { BarList } from './bar-list.tsx';
import { PlotFigure } from './plot-figure.tsx';
import { ShareBar } from './share-bar.tsx';

/** What is drawn of a result, as it is seen on the page. */
export function PictureFigure({ picture }: { readonly picture: Picture }) {
  switch (picture.kind) {
    case 'plot':
      return <PlotFigure picture={picture} />;
    case 'shares':
      return <ShareBar picture={picture} />;
    case 'bars':
      return <BarList picture={picture} />;
  }
}
