import type { Plugin } from 'vite';
import { PAGE_POLICY } from './policy.mjs';

/** Writes the policy into the built page, so that it holds on any server that a shop puts the folder on. */
export function pagePolicy(): Plugin {
  return {
    name: 'page-policy',
    apply: 'build',
    transformIndexHtml: {
      order: 'post',
      handler: () => [
        {
          tag: 'meta',
          attrs: { 'http-equiv': 'Content-Security-Policy', content: PAGE_POLICY },
          injectTo: 'head-prepend',
        },
      ],
    },
  };
}
