import './stop-trade-dial/define.js';
