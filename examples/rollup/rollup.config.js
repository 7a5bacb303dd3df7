import {nodeResolve} from '@rollup/plugin-node-resolve';

const plugins = [nodeResolve({browser: true})];

export default [
  // A page that computes and shows nothing: one function of the core, and no more than that.
  {input: 'compute.js', plugins, output: {file: 'built/compute.js', format: 'es'}},
  {input: 'main.js', plugins, output: {dir: 'built', format: 'es'}},
];
