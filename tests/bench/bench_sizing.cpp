// SPDX-License-Identifier: GPL-3.0-or-later
// What one sizing costs, and what units and the recorder cost. The two arithmetics alternate in
// small turns, so that a machine that drifts drifts for both; the ratio is of their medians.
#include <benchmark/benchmark.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <vector>

double kernel_with_units();
double kernel_with_doubles();

namespace {

double seconds_of(double (*kernel)(), int calls) {
  const auto start = std::chrono::steady_clock::now();
  for (int i = 0; i < calls; ++i) {
    benchmark::DoNotOptimize(kernel());
  }
  return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

double median(std::vector<double> values) {
  std::nth_element(values.begin(), values.begin() + static_cast<long>(values.size() / 2),
                   values.end());
  return values[values.size() / 2];
}

void units(benchmark::State& state) {
  for (auto _ : state) {
    benchmark::DoNotOptimize(kernel_with_units());
  }
}
BENCHMARK(units);

void plain_doubles(benchmark::State& state) {
  for (auto _ : state) {
    benchmark::DoNotOptimize(kernel_with_doubles());
  }
}
BENCHMARK(plain_doubles);

} // namespace

int main(int argc, char** argv) {
  benchmark::Initialize(&argc, argv);
  benchmark::RunSpecifiedBenchmarks();
  constexpr int turns = 401;
  constexpr int calls = 500;
  std::vector<double> with_units;
  std::vector<double> with_doubles;
  std::vector<double> ratios;
  for (int i = 0; i < turns; ++i) {
    with_units.push_back(seconds_of(kernel_with_units, calls));
    with_doubles.push_back(seconds_of(kernel_with_doubles, calls));
    ratios.push_back(with_units.back() / with_doubles.back());
  }
  std::printf(
      "one axis with units: %.3f µs; plain doubles: %.3f µs; ratio, median of %d pairs: %.3f\n",
      median(with_units) / calls * 1e6, median(with_doubles) / calls * 1e6, turns, median(ratios));
  const bool same = kernel_with_units() == kernel_with_doubles();
  std::printf("same result: %s\n", same ? "yes" : "no");
  return same ? 0 : 1;
}
