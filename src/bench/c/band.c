/* The equations of BandExample solved by LAPACK's dpbsv, called from compiled code.
   gcc -O3 -march=native band.c -llapack -lblas -o band; prints microseconds and the sum of all values. */
#include <math.h>
#include <stdio.h>
#include <string.h>
#include <time.h>

extern void dpbsv_(char *, int *, int *, int *, double *, int *, double *, int *, int *);

enum { SIZE = 72, BAND = 8, CASES = 8, ROWS = BAND + 1, RUNS = 20000, REPEATS = 10 };

static double now(void) {
  struct timespec t;
  clock_gettime(CLOCK_MONOTONIC, &t);
  return t.tv_sec + 1e-9 * t.tv_nsec;
}

int main(void) {
  static double matrix[SIZE * ROWS], sides[SIZE * CASES], a[SIZE * ROWS], b[SIZE * CASES];
  int n = SIZE, band = BAND, cases = CASES, rows = ROWS, info = 0;
  for (int j = 0; j < SIZE; j++)
    for (int i = 0; i <= BAND; i++)
      matrix[j * ROWS + i] = i == 0 ? 20.0 + j % 5 : 1.0 / (i + j % 3 + 1);
  for (int i = 0; i < SIZE * CASES; i++) sides[i] = i * 7 % 11 - 5;
  double best = 1e9;
  for (int repeat = 0; repeat < REPEATS; repeat++) {
    double start = now();
    for (int run = 0; run < RUNS; run++) {
      memcpy(a, matrix, sizeof matrix);
      memcpy(b, sides, sizeof sides);
      dpbsv_("L", &n, &band, &cases, a, &rows, b, &n, &info);
    }
    best = fmin(best, (now() - start) / RUNS);
  }
  double sum = 0;
  for (int i = 0; i < SIZE * CASES; i++) sum += fabs(b[i]);
  printf("%.3f %.15g\n", 1e6 * best, sum);
  return info;
}
