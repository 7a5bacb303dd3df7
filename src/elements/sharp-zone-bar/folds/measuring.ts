export {distanceView} from './distance-price.js';
export {ownLimitView} from './own-limit.js';
export {RulerPhoto} from './ruler-photo.js';
export {measuringStyles as styles} from './styles.js';
