import { checked } from '../checked.ts';
import { kept } from '../kept.ts';
import { siteSchema } from '../site.ts';
import type { Site } from '../site.ts';

/** Sets how the shop makes leaves: the step of their widths, in inches. RangeError for none. */
export const setShop = (site: Site, fields: Partial<Site['shop']>): Site => {
  const shop = kept(
    site.shop,
    checked(siteSchema.shape.shop, { ...site.shop, ...fields }, ['shop']),
  );
  return shop === site.shop ? site : { ...site, shop };
};
