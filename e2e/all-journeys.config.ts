import config from './playwright.config.ts';

const { grepInvert: _, ...all } = config;

/** Every journey, the long ones too: `npm run journeys`. */
export default all;
