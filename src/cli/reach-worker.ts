/** One share of the rays of a sweep, on a thread of its own. The rasters are shared, so nothing is sent back. */
import { parentPort, workerData } from 'node:worker_threads';
import { type RayShare, sweepShare } from './ray-share.ts';

// Handed over by sweep.ts, which is the only one to start this file.
sweepShare(workerData as RayShare);
parentPort?.postMessage('done');
