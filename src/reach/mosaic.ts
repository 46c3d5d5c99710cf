/**
 * Several elevation grids read as one. The finest grid that has a height at a place gives it; voids and places
 * outside fall through to coarser grids. Between two tiles that do not share their edge samples the step from
 * one to the other is interpolated like any other.
 */
import { type ElevationGrid, heightAt, stepsM } from './grid.ts';
import type { Position } from './position.ts';

export interface Terrain {
  /** Finest first; of equally fine ones, in the order given. */
  readonly grids: readonly ElevationGrid[];
  /** Ground height, metres, or `undefined` where no grid has one. */
  heightM(position: Position): number | undefined;
  /** Steps of the finest grid that covers a place, the smaller of the two, metres; `undefined` outside all. */
  stepM(position: Position): number | undefined;
}

export function mosaic(grids: readonly ElevationGrid[]): Terrain {
  const finestFirst = [...grids].sort((a, b) => a.stepNorthDeg - b.stepNorthDeg);
  const others = finestFirst.map((grid) => finestFirst.filter((other) => other !== grid));
  const firstHeight = (among: readonly ElevationGrid[], position: Position) => {
    for (const grid of among) {
      const height = heightAt(grid, position);
      if (height !== undefined) return height;
    }
    return undefined;
  };
  return {
    grids: finestFirst,
    heightM(position) {
      for (const [index, grid] of finestFirst.entries()) {
        const neighbours = others[index] ?? [];
        const height =
          neighbours.length === 0
            ? heightAt(grid, position)
            : heightAt(grid, position, (corner) => firstHeight(neighbours, corner));
        if (height !== undefined) return height;
      }
      return undefined;
    },
    stepM(position) {
      const covering = finestFirst.find((grid) => heightAt(grid, position) !== undefined);
      if (!covering) return undefined;
      const { northM, eastM } = stepsM(covering, position.latitudeDeg);
      return Math.min(northM, eastM);
    },
  };
}
