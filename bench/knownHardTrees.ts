import type { DrawnLimb, DrawnTree } from './hardTrees'

/** A limb a line: diameter, stem, origin, tip, included bark, and the limb it grows on, or `leader`. */
function limbs(lines: string): DrawnLimb[] {
  return lines
    .trim()
    .split('\n')
    .map((line) => {
      const [diameter, stem, origin, tip, bark = '', on = ''] = line.split(' ')
      return {
        diameter: Number(diameter),
        stem: Number(stem),
        origin: Number(origin),
        tip: Number(tip),
        bark,
        on: /\d/.test(on) ? Number(on) : null,
        leads: on === 'leader'
      }
    })
}

/** Invented trees that took seconds to plan before the bounds were as tight as they are, or that a hunt found since. */
export const hardTrees: readonly (DrawnTree & { readonly name: string })[] = [
  {
    name: '36 limbs of a vase, many of them equal',
    height: 43.6,
    base: 4.2,
    stage: 'medium',
    vigor: 'good',
    limbs: limbs(`
9.1 10.2 4.2 43.6 none leader
4.9 10.2 17 41.6 none -
2.9 10.2 22 42.2 none -
1.4 10.2 26.7 40.5 none -
2.1 10.2 32.2 39.2 none -
8.7 10.2 29.3 41.9 none -
3.2 10.2 29.5 40.6 none -
8.3 10.2 19 28.7 none -
1.8 10.2 14 25.5 none -
3.9 10.2 8.8 24.1 none -
6.5 10.2 23.9 31.7 none -
2.8 10.2 13.4 43.5 none -
4 10.2 29.9 37.3 none -
5.1 10.2 32.6 41.1 none -
6.6 10.2 26.5 38.4 none -
4.6 10.2 30.5 36.9 none -
3.3 10.2 28 34.1 none -
3.7 10.2 29.5 35.9 none -
9.3 10.2 31.3 35.7 none -
4.1 10.2 26.8 37.2 none -
6.8 10.2 25.4 34.4 none -
8.8 10.2 31.4 40 none -
1.9 10.2 28.3 39.3 none -
4.3 10.2 28.7 39.5 none -
1.4 10.2 21.3 37.1 none -
7.9 10.2 20.6 28.9 none -
1.4 10.2 6.8 15.9 none -
8.5 10.2 26.5 32.2 none -
6.7 10.2 24.4 38.8 none -
7.3 10.2 31.5 42.3 none -
8.2 10.2 29.6 33.1 none -
8.8 10.2 25.9 32 none -
8.5 10.2 7.4 23.2 none -
3.1 10.2 21.4 27.9 none -
3.1 10.2 28.2 40.7 none -
5 10.2 15.6 37.9 none -`)
  },
  {
    name: '49 limbs, some of them on others, and six cuts at most',
    height: 50.1,
    base: 11.2,
    stage: 'medium',
    vigor: 'fair',
    limbs: limbs(`
10.4 9.6 23 42.3 full -
7.8 11.1 18.1 36.3 none -
4.1 13.1 11.7 40.3 partial -
10.9 11.7 16.3 38 none -
8.9 15.2 5.3 45.6 none -
8.4 13.6 10.4 45.3 none -
12.9 8.5 26.4 50 none -
3.6 6.2 23.5 46.6 partial 1
1.4 6.2 29 44.4 none 1
6.8 5.9 34.7 44.7 partial -
10.1 6.2 33.6 49.4 full -
7.9 8.3 29.5 49.1 partial 0
4.2 6.4 33.1 47.4 full -
4.2 14.3 8.1 37.3 partial -
5.5 8.7 27.7 34.6 full 3
3.8 8.3 38.7 48.8 none 0
10.8 9.2 24.3 46.1 partial -
5.4 7.1 13.1 39.3 partial 4
5.2 13.5 10.6 49.9 full -
1.3 6.2 14.6 43.7 partial 1
5.9 6.2 31.5 48.1 none 1
1.8 3.3 21.1 47.6 none 2
8 6.7 32.2 47.1 none -
2.6 6.2 33.5 49.5 none 1
7.3 8.3 30.9 36.5 none 0
4.4 6.7 25.8 43.8 none 5
10.8 13.2 11.6 46.1 none -
10 13.5 17.6 30.9 none -
9.6 11.4 17.3 33.3 none -
4.2 6.7 29.7 45.2 none 5
3.9 14.9 6.2 43.7 none -
8.7 8.7 19.7 44.4 none 3
5.3 8.7 32 40.9 none 3
2.5 5.8 33.9 49 none -
8.2 11.7 16.2 39.7 full -
1.3 6.7 29 43.7 none 5
6.2 8.3 34.4 37 none 0
9.3 15.3 5 42.3 full -
13 9.3 24 37.3 full -
4.7 7.1 15.7 44.6 none 4
6.5 14.8 6.6 40.5 partial -
7.4 8.3 30.9 47.7 none 0
6.3 9.2 24.3 38.8 full -
4.1 13.1 11.7 40.3 none -
6.1 8.3 30.9 36.5 none 0
3.9 13.1 11.7 40.3 none -
3.8 6.2 23.5 46.2 partial 1
6 9.2 24.3 38.8 full -
3.9 13.1 11.7 40.3 partial -`)
  },
  {
    name: 'limbs on limbs with many ways to treat them',
    height: 52,
    base: 6,
    stage: 'medium',
    vigor: 'fair',
    limbs: limbs(`
5.8 6.4 28.7 49.9 full -
5.6 12.5 13.9 44.5 partial -
6.8 10.2 21.4 35.2 full -
9.6 12.6 13.5 40.1 full -
2.3 13.7 9.9 48.6 full -
12.6 8.1 28.4 48.4 none -
12.6 14.2 8.3 34.1 partial -
5.4 7.4 20.9 49.1 none 3
3 4.6 38.8 46.9 none 0
7.7 9.4 24.7 50.7 full -
1.9 4.6 37.2 48 partial 0
8.4 7.7 29.8 47.3 none -
8.1 6.4 33.3 45.1 full -
8.3 6.6 33.5 51.3 none -
1.1 2.6 20.5 45.3 none 4
1.1 3.9 23.6 40.5 none 1
3.3 12.1 14.9 43.6 none -
5.6 7.4 26.3 39.1 none 3
4 5.5 35.1 50.8 none 2
6.9 10.1 35.1 43.9 none 5
10.4 12.6 13.4 42.4 full -
3.4 5.5 11.3 45.9 full 2
7.2 6.8 32.8 44.7 full -
3.7 5.5 32.4 51.9 none 2
3.3 5.5 34.2 51.6 full 2
11.5 14.3 7.8 50.1 partial -
8.8 12.6 13.5 40.1 none -
7.3 7.7 26.8 47.3 none -
6.3 7.4 20.9 49.1 none 3
9.5 12.6 13.5 40.1 partial -
3.7 5.5 11.3 45.9 full 2
3.3 12.1 15.3 43.6 none -
8.8 6.8 32.8 46 full -
5.6 7.4 20.9 49.1 none 3
5.8 7.4 20.9 49.1 none 3
3.3 12.1 15.3 43.6 none -`)
  },
  {
    name: 'limbs on limbs and little to tell them apart',
    height: 57.9,
    base: 8,
    stage: 'medium',
    vigor: 'fair',
    limbs: limbs(`
5.9 3.7 15.1 54.8 partial -
1.6 4.4 34.4 53.6 none -
5.9 6.1 38.6 54.8 partial -
1.7 4.7 32.6 43.1 none -
3.7 4.7 32.5 57.6 none 2
4.8 5.9 24.1 56.5 partial -
1.5 4.7 30.2 49.7 none 2
0.7 1.4 50.1 53.7 full 1
3.2 5 39 52.4 full -
3.1 3.8 34.4 53.9 full 5
2.4 3.1 42.8 48 full 4
4.7 4.7 26.5 50.6 partial 2
1.2 5.4 37.2 52.8 none 3
1.8 6.4 20.8 53.9 full -
1.6 4.7 32.6 48.8 full -
5.7 6.1 33.5 44.2 none -
3.5 4.6 32.9 49.9 none -
4.8 3.7 37.9 56.1 full -
0.8 7.1 15.9 46.1 partial -
6.5 7 16.6 41.8 full -
2.6 4.9 31.2 44.7 partial -
5.9 5.5 26.8 55.7 none -
4.3 5.4 33.4 57.9 none 3
2.9 4.7 14.8 48.4 partial 2
1.2 3.7 39.3 56.6 none -
0.8 3.1 12.4 56.5 full 4
1.7 6.9 17.5 51.7 full -
2.1 3.1 35.4 56.2 full 4
3.5 4.4 34.4 56.5 none -
0.7 3.1 21.2 57.2 full 4
0.7 1.4 12.9 53.7 full 1
4.5 5.4 33.4 46.5 none 3
2.1 4.4 36.9 47 none -
0.7 1.4 50.1 53.7 full 1
6.5 7 16.6 41.8 none -
2.5 4.9 31.2 44.7 partial -
0.9 7.1 15.9 46.1 partial -
3.5 4.7 32.5 57.6 none 2
2.4 4.9 31.2 44.7 partial -`)
  }
]
