import { useMemo, useRef } from 'react';
import { Picture } from '../../canvas/Picture.tsx';
import { useSize } from '../../canvas/useSize.ts';
import { palettes } from '../../drawing/palettes.ts';
import { pageAtoms } from '../../drawing/sheet/pageAtoms.ts';
import type { Page } from '../../drawing/sheet/page.ts';
import { toSvg } from '../../exporters/svg/toSvg.ts';
import { useBench, useSite } from '../bench.ts';
import { download } from '../files/download.ts';
import { fileStem } from '../../site/fileStem.ts';
import { pagePlace } from './pagePlace.ts';
import { useNear } from './useNear.ts';

/** One page as it will be printed, as wide as there is room, painted while it is near. */
export const PagePreview = ({ page }: { readonly page: Page }) => {
  const { session } = useBench();
  const { job } = useSite();
  const room = useRef<HTMLDivElement>(null);
  const { width } = useSize(room);
  const near = useNear(room);
  const { paper } = page;
  const atoms = useMemo(() => pageAtoms(page), [page]);
  const save = () => {
    const name = `${fileStem(`${job.name} ${page.title}`)}.svg`;
    download({ name, type: 'image/svg+xml', content: toSvg(page) });
    session.setState({ say: `Saved ${name}` });
  };
  return (
    <figure className="leaf" id={pagePlace(page.title)}>
      <figcaption>
        {page.title}
        <button type="button" aria-label={`Download SVG of page ${page.title}`} onClick={save}>
          Download SVG
        </button>
      </figcaption>
      <div ref={room} style={{ aspectRatio: `${paper.width} / ${paper.height}` }}>
        {near && width > 0 && (
          <Picture
            atoms={atoms}
            palette={palettes.paper}
            width={paper.width}
            height={paper.height}
            scale={width / paper.width}
            label={`Page ${page.title}, ${paper.label}`}
          />
        )}
      </div>
    </figure>
  );
};
