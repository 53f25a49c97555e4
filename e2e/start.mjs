// npm start: installs what is missing, builds, serves the built app, says where.
import { asHosted } from './headers.mjs';
import { installPackages, root, tool } from './tools/install.mjs';

installPackages();
if (tool('vite', ['build', '--logLevel', 'warn']) !== 0) process.exit(1);

const { preview } = await import('vite');
const port = Number(process.env.PORT ?? 4173);
const server = await preview({
  root: `${root}/src`,
  configFile: `${root}/vite.config.ts`,
  plugins: [asHosted],
  preview: { port, strictPort: false, host: 'localhost' },
});
const { port: open } = server.httpServer.address();
console.log(`
  Knifeline is at  http://localhost:${open}/

  On a phone: put the folder dist/ on any static HTTPS host, under any path, open it once, add it to the home screen.
  Stop with Ctrl-C.
`);
