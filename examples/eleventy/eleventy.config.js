/** The script-tag files are copied as they are; an article then needs one line and a tag. */
export default function (config) {
  config.addPassthroughCopy({'node_modules/lampblack/dist/standalone': 'lampblack'});
  return {dir: {input: 'pages', output: 'built'}};
}
