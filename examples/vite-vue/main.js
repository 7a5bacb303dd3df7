import {createApp} from 'vue';
import 'lampblack/elements/sharp-zone-bar';
import Page from './Page.vue';

createApp(Page).mount('#page');
