/** A page a check for places that take frames or links: each with its oEmbed document, and the link that leads there. */

/** Heights in CSS px before the frame tells its own, as measured at 600 px width. */
const HEIGHTS = {
  'backdrop-shade': 1500, 'gray-card-check': 900, 'settings-trail': 560, 'sharp-zone-bar': 900, 'shot-plan': 1500,
  'shot-sheet': 700, 'stop-trade-dial': 820, 'tonal-chart-reader': 900,
};
const WIDTH = 600;

const TITLES = {
  'backdrop-shade': 'How dark will the backdrop be?', 'gray-card-check': 'Can the gray card be trusted?',
  'settings-trail': 'Do the settings of a lesson balance?', 'sharp-zone-bar': 'Sharp from front to back?',
  'shot-plan': 'Ways to get all of the figure sharp', 'shot-sheet': 'The record of a shot',
  'stop-trade-dial': 'The same light, another setting', 'tonal-chart-reader': 'The tonal chart of a photo',
};

export const titleOf = (tag) => TITLES[tag] ?? tag;

/** Where the site will stand, with a slash at its end: oEmbed wants whole addresses. */
export const siteAddress = () => (process.env.SITE_URL || 'http://localhost:4173/').replace(/\/?$/, '/');

/**
 * The link by which a page says where its oEmbed document is; oembed.com, section 4. The address is whole: not everybody who follows such
 * links works out one that is not.
 */
export const discoveryLink = (tag, address = siteAddress()) =>
  `<link rel="alternate" type="application/json+oembed" href="${address}oembed/${tag}.json" title="${titleOf(tag)}">`;

/**
 * @param address - of the site, with a slash at its end
 * @param page - the general frame page, which gets its check from the address
 * @returns texts by name of file
 */
export function framePages(tags, address, page) {
  return Object.fromEntries(tags.flatMap((tag) => {
    const head = `<meta name="lampblack-tag" content="${tag}">\n  ${discoveryLink(tag, address)}`;
    const own = page.replaceAll(/(href|src)="(?!#|https?:)/g, '$1="../')
      .replace(/<title>.*<\/title>/, `<title>${titleOf(tag)} · Lampblack</title>\n  ${head}`);
    return [[`embed/${tag}.html`, own], [`oembed/${tag}.json`, `${JSON.stringify(oembed(tag, address), null, 2)}\n`]];
  }));
}

/** Rich content of oEmbed 1.0; see oembed.com, section 2.3.4.4. */
function oembed(tag, address) {
  const [height, title] = [HEIGHTS[tag] ?? 800, titleOf(tag)];
  return {
    version: '1.0', type: 'rich', title, provider_name: 'Lampblack', provider_url: address, cache_age: 86400, width: WIDTH, height,
    html: `<iframe src="${address}embed/${tag}.html" title="${title}" width="${WIDTH}" height="${height}" `
      + 'sandbox="allow-scripts" loading="lazy" style="border:0;max-width:100%"></iframe>',
  };
}
