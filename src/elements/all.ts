import './backdrop-shade/define.js';
import './gray-card-check/define.js';
import './settings-trail/define.js';
import './sharp-zone-bar/define.js';
import './shot-plan/define.js';
import './shot-sheet/define.js';
import './stop-trade-dial/define.js';
import './tonal-chart-reader/define.js';
