import { serve } from './serve';

/** Serves the built app for a whole run on a free port: two runs at one time do not meet. */
export default async function site(): Promise<() => Promise<void>> {
  const served = await serve();
  process.env.KNIFELINE_SITE = served.url;
  return served.stop;
}
