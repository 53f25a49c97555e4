/** The web app manifest: what a phone reads when the app is put on its home screen. Routes live in the hash. */
export const manifest = {
  id: './',
  name: 'Knifeline',
  short_name: 'Knifeline',
  description:
    'Measuring and marking in the shop: exact figures, groove marks, stop settings, ticks that stay.',
  lang: 'en',
  start_url: './',
  scope: './',
  display: 'standalone' as const,
  orientation: 'any' as const,
  background_color: '#D3DADE',
  theme_color: '#D3DADE',
  icons: [
    { src: 'icon-192.png', sizes: '192x192', type: 'image/png', purpose: 'any' as const },
    { src: 'icon-512.png', sizes: '512x512', type: 'image/png', purpose: 'any' as const },
    { src: 'icon-maskable-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' as const },
    { src: 'icon-mono.svg', sizes: 'any', type: 'image/svg+xml', purpose: 'monochrome' as const },
  ],
  shortcuts: [
    { name: 'Figure', short_name: 'Figure', url: './#/figure' },
    { name: 'Last setup', short_name: 'Last setup', url: './#/last' },
  ],
  file_handlers: [{ action: './#/import', accept: { 'application/json': ['.json'] } }],
  share_target: {
    action: './share',
    method: 'POST' as const,
    enctype: 'multipart/form-data' as const,
    params: { files: [{ name: 'job', accept: ['application/json', '.json', 'text/plain', '.txt'] }] },
  },
};
