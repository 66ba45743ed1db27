import { useRef } from 'react';
import { Picture } from '../../canvas/Picture.tsx';
import { useSize } from '../../canvas/useSize.ts';
import { palettes } from '../../drawing/palettes.ts';
import type { Page } from '../../drawing/sheet/page.ts';

/** One page as it will be printed, as wide as there is room. */
export const PagePreview = ({ page }: { readonly page: Page }) => {
  const room = useRef<HTMLDivElement>(null);
  const { width } = useSize(room);
  const { paper } = page;
  return (
    <figure className="leaf">
      <figcaption>{page.title}</figcaption>
      <div ref={room}>
        {width > 0 && (
          <Picture
            atoms={page.atoms}
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
