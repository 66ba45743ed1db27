import { useMemo, useRef, useState } from 'react';
import { Picture } from '../../canvas/Picture.tsx';
import { useSize } from '../../canvas/useSize.ts';
import { palettes } from '../../drawing/palettes.ts';
import { pageAtoms } from '../../drawing/sheet/pageAtoms.ts';
import type { Page } from '../../drawing/sheet/page.ts';
import { toSvg } from '../../exporters/svg/toSvg.ts';
import { phrase } from '../../phrases/phrase.ts';
import { useBench, useSite } from '../bench.ts';
import { download } from '../files/download.ts';
import { fileStem } from '../../site/fileStem.ts';
import { askPng } from './askPng.ts';
import { pagePlace } from './pagePlace.ts';
import { useNear } from './useNear.ts';

interface Props {
  readonly page: Page;
  /** Dots per inch of its PNG. */
  readonly dpi: number;
}

/** One page as it will be printed, as wide as there is room, painted while it is near. */
export const PagePreview = ({ page, dpi }: Props) => {
  const { session } = useBench();
  const { job } = useSite();
  const room = useRef<HTMLDivElement>(null);
  const { width } = useSize(room);
  const near = useNear(room);
  const [busy, setBusy] = useState(false);
  const { paper } = page;
  const atoms = useMemo(() => pageAtoms(page), [page]);
  const save = () => {
    const name = `${fileStem(`${job.name} ${page.title}`)}.svg`;
    download({ name, type: 'image/svg+xml', content: toSvg(page) });
    session.setState({ say: phrase`Saved ${name}` });
  };
  const savePng = async () => {
    setBusy(true);
    const png = await askPng({ page, dpi });
    setBusy(false);
    const name = `${fileStem(`${job.name} ${page.title}`)}.png`;
    if (png.ok) download({ name, type: 'image/png', content: png.value });
    session.setState({
      say: png.ok ? phrase`Saved ${name}` : phrase`The PNG could not be made: ${png.reason}`,
    });
  };
  return (
    <figure className="leaf" id={pagePlace(page.title)}>
      <figcaption>
        {page.title}
        <button
          type="button"
          aria-label={phrase`Download SVG of page ${page.title}`}
          onClick={save}
        >{phrase`Download SVG`}</button>
        <button
          type="button"
          disabled={busy}
          aria-label={phrase`Download PNG of page ${page.title}`}
          onClick={() => void savePng()}
        >
          {busy ? phrase`Making the PNG…` : phrase`Download PNG`}
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
            label={phrase`Page ${page.title}, ${paper.label}`}
          />
        )}
      </div>
    </figure>
  );
};
